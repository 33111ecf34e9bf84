package benchtrue.shop;

/** What a quoted line charges for. */
public enum ChargeKind {
    REPAIR,
    PACKAGE,
    MINIMUM,
    EVALUATION,
    RUSH,
    OUTSIDE_WORK,
    STORAGE
}
