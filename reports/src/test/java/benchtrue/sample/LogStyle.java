package benchtrue.sample;

/** How a technician writes time down. */
enum LogStyle {
    DECIMAL,
    HOURS_AND_MINUTES,
    CLOCK
}
