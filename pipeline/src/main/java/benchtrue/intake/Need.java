package benchtrue.intake;

/** Whether something must be there. */
public enum Need {
    REQUIRED,
    OPTIONAL
}
