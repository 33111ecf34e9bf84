package benchtrue.sample;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes {@code truth.json} and, for smaller shops, {@code truth-lines.csv}. */
final class TruthFiles {
    private static final String ABOUT = String.join(
            " ",
            "What is true of this invented shop; no real shop, person or instrument.",
            "Judged lines are closed, accepted lines of charge kind repair, not quoted by time, in the price book, that",
            "do not put earlier work right (new damage is a new job). Their quoted hours are the first accepted quote,",
            "the book's hours where none was given, times today's book over the book on the day of the quote.",
            "Expected hours are the generator's, given the instrument's class and traits, the technician, the condition",
            "the quote writer saw and the date; for a line whose quote was copied into the log, the copy.",
            "Rework hours are those of lines on closed visits that put a line right for reasons of the shop's own.",
            "true_load is expected hours, rework included, over quoted hours under the shop's mix of classes, traits,",
            "writers and technicians, whatever visits it happened to have, by simulation of 25 times as many: what the",
            "interval of the load factor is for. expected_factor is the same over the visits it did have.",
            "realised_factor is the hours logged for the judged lines, whatever the label and without rework, over",
            "quoted hours: what a split without error would show.",
            "Hours of one-off lines include those of faulty entries that count.");

    private TruthFiles() {}

    static void write(World world, Truth truth) throws IOException {
        Path folder = world.options().folder();
        Files.writeString(folder.resolve("truth.json"), json(world, truth), StandardCharsets.UTF_8);
        if (!truth.lines().isEmpty()) {
            lines(folder.resolve("truth-lines.csv"), truth);
        }
    }

    private static String json(World world, Truth truth) {
        SampleOptions options = world.options();
        return "{\n"
                + "  \"about\": " + quoted(ABOUT) + ",\n"
                + "  \"as_of\": \"2026-10-31\",\n"
                + "  \"seed\": " + options.seed() + ",\n"
                + "  \"tickets\": " + options.tickets() + ",\n"
                + "  \"years\": " + options.years() + ",\n"
                + "  \"tidiness\": " + quoted(options.tidiness().name().toLowerCase(Locale.ROOT)) + ",\n"
                + "  \"whole_ticket_share\": " + options.wholeTicketShare() + ",\n"
                + "  \"slowing\": {\"repair_type\": " + quoted(truth.slowType()) + ", \"from\": \""
                + truth.slowFrom() + "\", \"factor\": " + truth.slower() + "},\n"
                + "  \"together\": "
                + truth.together().stream().map(TruthFiles::array).collect(Collectors.joining(", ", "[", "]")) + ",\n"
                + "  \"found_work\": "
                + truth.found().stream().map(TruthFiles::found).collect(Collectors.joining(", ", "[", "]"))
                + ",\n"
                + "  \"adjustment_borne_out\": " + truth.adjustmentBorneOut() + ",\n"
                + "  \"technicians\": " + numbers(truth.technicians()) + ",\n"
                + "  \"quote_writers\": " + numbers(truth.writers()) + ",\n"
                + "  \"instrument_classes\": " + numbers(truth.classes()) + ",\n"
                + "  \"traits\": "
                + truth.traits().stream()
                        .map(TruthFiles::trait)
                        .collect(Collectors.joining(",\n    ", "[\n    ", "\n  ]"))
                + ",\n"
                + "  \"planted\": "
                + truth.planted().entrySet().stream()
                        .map(entry -> quoted(entry.getKey()) + ": " + entry.getValue())
                        .collect(Collectors.joining(",\n    ", "{\n    ", "\n  }"))
                + ",\n"
                + "  \"repair_types\": "
                + truth.types().stream()
                        .map(TruthFiles::type)
                        .collect(Collectors.joining(",\n    ", "[\n    ", "\n  ]"))
                + "\n"
                + "}\n";
    }

    private static String trait(TraitTruth trait) {
        return "{\"trait\": " + quoted(trait.trait()) + ", \"factor\": " + trait.factor() + ", \"families\": "
                + array(trait.families()) + "}";
    }

    private static String found(FoundTruth found) {
        return "{\"repair_type\": " + quoted(found.repairType()) + ", \"finds\": " + quoted(found.finds())
                + ", \"chance\": " + found.chance() + "}";
    }

    private static String type(TypeTruth type) {
        return "{\"repair_type\": " + quoted(type.repairType()) + ", \"lines\": " + type.lines()
                + ", \"true_load\": " + number(type.trueLoad())
                + ", \"expected_factor\": " + number(type.expectedFactor())
                + ", \"realised_factor\": " + number(type.realisedFactor())
                + ", \"typical_factor\": " + number(type.typicalFactor())
                + ", \"sd\": " + number(type.sd())
                + ", \"quoted_hours\": " + number(type.quotedHours())
                + ", \"expected_hours\": " + number(type.expectedHours())
                + ", \"expected_rework_hours\": " + number(type.expectedReworkHours())
                + ", \"logged_hours\": " + number(type.loggedHours())
                + ", \"rework_hours\": " + number(type.reworkHours())
                + ", \"unquoted_hours\": " + number(type.unquotedHours()) + "}";
    }

    private static String number(double value) {
        return Double.isNaN(value) ? "null" : String.format(Locale.ROOT, "%.6f", value);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static String array(Iterable<String> words) {
        StringBuilder array = new StringBuilder("[");
        words.forEach(word -> array.append(array.length() == 1 ? "" : ", ").append(quoted(word)));
        return array.append(']').toString();
    }

    private static String numbers(Map<String, Double> map) {
        return map.entrySet().stream()
                .map(entry -> quoted(entry.getKey()) + ": " + number(entry.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static void lines(Path file, Truth truth) throws IOException {
        String header = "ticket,line,repair_type,state,judged,quoted_hours,rebased_hours,expected_hours,logged_hours,"
                + "worked_hours";
        Row row = new Row();
        try (CsvFile out = new CsvFile(file, header)) {
            for (LineTruth line : truth.lines()) {
                row.text(line.ticket())
                        .number(line.line())
                        .text(line.repairType())
                        .text(line.state());
                row.text(line.judged() ? "yes" : "no").exactHours(line.quotedSeconds());
                row.exactHours(line.rebasedSeconds()).exactHours(line.expectedSeconds());
                row.exactHours(line.loggedSeconds()).exactHours(line.workedSeconds());
                out.write(row.end());
            }
        }
    }
}
