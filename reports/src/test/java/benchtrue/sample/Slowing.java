package benchtrue.sample;

/** Whether one repair type of the invented shop gets slower from a known date. */
public enum Slowing {
    PLANTED,
    NONE
}
