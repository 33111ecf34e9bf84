package benchtrue.settings;

/** Whether something is shown at all. */
public enum Disclosure {
    HIDDEN,
    SHOWN
}
