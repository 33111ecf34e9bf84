package benchtrue.intake;

/** From which day a spreadsheet's serial dates count. */
enum DateSystem {
    FROM_1900,
    FROM_1904
}
