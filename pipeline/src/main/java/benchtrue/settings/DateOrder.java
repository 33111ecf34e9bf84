package benchtrue.settings;

/** In which order a date in figures is written. */
public enum DateOrder {
    DAY_MONTH_YEAR,
    MONTH_DAY_YEAR,
    YEAR_MONTH_DAY
}
