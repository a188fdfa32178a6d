"""
Asks a general-purpose constraint solver whether the work of a practical can end a quarter of a minute sooner than the course says, and
prints its answer for each case of orders-of-work.json. Written apart from the engine; not run by npm test.
Needs Python 3 with the package ortools: python3 tests/reference/orders-of-work.py
"""

import json
import pathlib
import time

from ortools.sat.python import cp_model

DATA = pathlib.Path(__file__).with_name("orders-of-work.json")


def can_end_by(horizon, people, burners, parts):
    """parts: for each part in order, the number of its tubes and their turns as [work, wait, burner], quarter minutes."""
    model = cp_model.CpModel()
    hands, flames = [], []
    begun = 0
    for count, turns in parts:
        before = None
        following = model.new_int_var(0, horizon, "")
        for _ in range(count):
            starts, ready = [], 0
            for k, (work, wait, burner) in enumerate(turns):
                head = sum(w + v for w, v, _ in turns[:k])
                tail = sum(w + v for w, v, _ in turns[k:]) - turns[-1][1]
                if head > horizon - tail:
                    return "INFEASIBLE"
                start = model.new_int_var(head, horizon - tail, "")
                model.add(start >= ready)
                ready = start + work + wait
                interval = model.new_fixed_size_interval_var(start, work, "")
                hands.append(interval)
                if burner:
                    flames.append(interval)
                starts.append(start)
            # Parts keep their order: none of a part is begun before all of the part before it are.
            model.add(starts[0] >= begun)
            model.add(starts[0] <= following)
            # Tubes of a part are alike, so the first begun can always be the first to go on.
            for earlier, later in zip(before or [], starts):
                model.add(earlier <= later)
            before = starts
        begun = following
    model.add_cumulative(hands, [1] * len(hands), people)
    model.add_cumulative(flames, [1] * len(flames), burners)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = 900
    return solver.status_name(solver.solve(model))


for case in json.loads(DATA.read_text())["cases"]:
    started = time.process_time()
    sooner = can_end_by(case["end"] - 1, case["people"], 1, case["parts"])
    exact = can_end_by(case["end"], case["people"], 1, case["parts"])
    print(case["practical"], case["end"] - 1, sooner, case["end"], exact, f"{time.process_time() - started:.1f} s")
