package benchtrue.command;

import benchtrue.breakdown.Field;
import benchtrue.breakdown.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** The names that a question may use, each with what it is. */
final class KnownNames {
    private static final int NAME = 12;

    private KnownNames() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("To group by (--by, --across) and to ask for (--where):");
        fields(Field::groups, lines);
        lines.add("To ask for (--where):");
        fields(field -> !field.groups(), lines);
        lines.add("Figures (--show, --sort):");
        Arrays.stream(Measure.values()).forEach(measure -> lines.add(line(measure.word(), measure.meaning())));
        return lines;
    }

    private static void fields(Predicate<Field> which, List<String> lines) {
        Arrays.stream(Field.values()).filter(which).forEach(field -> lines.add(line(field.word(), field.meaning())));
    }

    private static String line(String name, String meaning) {
        return "  " + name + " ".repeat(NAME - name.length()) + meaning;
    }
}
