package benchtrue.mapping;

import java.util.List;
import java.util.Locale;

/** A pattern that fits some files and no others. */
final class FilePattern {
    private FilePattern() {}

    /**
     * Returns a pattern for names, with * for their dates and what differs, such that next month's file fits too; empty
     * where it would fit others as well.
     *
     * @param names of one system's files
     * @param others that it must not fit
     */
    static List<String> of(List<String> names, List<String> others) {
        String common = names.stream()
                .map(name -> name.replaceAll("\\d[\\d._-]*\\d(?=[^\\d]*$)", "*").replaceAll("\\*+", "*"))
                .reduce(FilePattern::merged)
                .orElseThrow();
        boolean usable = common.matches(".*\\p{L}.*") && others.stream().noneMatch(other -> fits(common, other));
        return usable && names.stream().allMatch(name -> fits(common, name)) ? List.of(common) : names;
    }

    private static String merged(String left, String right) {
        if (left.equals(right)) {
            return left;
        }
        int start = 0;
        while (start < Math.min(left.length(), right.length()) && left.charAt(start) == right.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < Math.min(left.length(), right.length()) - start
                && left.charAt(left.length() - 1 - end) == right.charAt(right.length() - 1 - end)) {
            end++;
        }
        return (left.substring(0, start) + "*" + left.substring(left.length() - end)).replaceAll("\\*+", "*");
    }

    static boolean fits(String pattern, String name) {
        return name.toLowerCase(Locale.ROOT)
                .matches("\\Q" + pattern.toLowerCase(Locale.ROOT).replace("*", "\\E.*\\Q") + "\\E");
    }
}
