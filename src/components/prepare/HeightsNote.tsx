/** How far the heights of fill marks can be trusted. Apart from the rack, so that its island need not carry it. */
export const HeightsNote = () => (
  <p class="small soft">
    Heights are measured from the inside of the bottom. In brackets: from the thinnest to the thickest wall such tubes
    are made with, remembered and not measured. To be sure, put 1 cm³ of water from a syringe into one of yours, mark
    where it stands and shift the other marks by as much.
  </p>
);
