package benchtrue.intake.cells;

/** From which day a spreadsheet's serial dates count. */
public enum DateSystem {
    FROM_1900,
    FROM_1904
}
