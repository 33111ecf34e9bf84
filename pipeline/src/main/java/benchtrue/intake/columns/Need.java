package benchtrue.intake.columns;

/** Whether something must be there. */
public enum Need {
    REQUIRED,
    OPTIONAL
}
