package benchtrue.charts;

/** A repair type's key as part of a file name that every system takes. */
final class FileName {
    private static final int LONGEST = 40;

    private FileName() {}

    /** Returns letters, digits and hyphens; the type's number is added where a key had to be changed. */
    static String of(String key, int repairType) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < key.length() && name.length() < LONGEST; i++) {
            char c = key.charAt(i);
            boolean plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
            name.append(plain ? c : '-');
        }
        return name.toString().equals(key) ? key : name + "-" + (repairType + 1);
    }
}
