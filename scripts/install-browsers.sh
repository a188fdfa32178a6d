#!/usr/bin/env bash
# Installs Firefox, and WebKit with its driver and a screen in memory, for tests/browser/engines. For Debian and its kin, as root.
set -euo pipefail
packages=(firefox-esr webkit2gtk-driver xvfb)

if ! command -v apt-get >/dev/null; then
  echo "This machine has no apt-get: install Firefox and WebKitGTK's driver its own way, or leave those tests out." >&2
  exit 1
fi
if [ "$(id -u)" -ne 0 ]; then
  echo "Only root may install packages: run it with sudo." >&2
  exit 1
fi
if dpkg-query --show "${packages[@]}" >/dev/null 2>&1; then
  echo "All there: ${packages[*]}"
  exit 0
fi
export DEBIAN_FRONTEND=noninteractive
install=(apt-get install --yes --no-install-recommends "${packages[@]}")
"${install[@]}" || { apt-get update && "${install[@]}"; }
