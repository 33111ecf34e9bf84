package benchtrue.settings;

/** What stands before the decimals of a number. */
public enum DecimalSign {
    POINT('.'),
    COMMA(',');

    private final char sign;

    DecimalSign(char sign) {
        this.sign = sign;
    }

    public char sign() {
        return sign;
    }
}
