package benchtrue.shop;

/** How a technician is paid. */
public enum PayBasis {
    HOURLY,
    SALARY,
    SHARE,
    OWNER
}
