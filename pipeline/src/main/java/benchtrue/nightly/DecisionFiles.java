package benchtrue.nightly;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The files of {@code decisions/}: one for each sitting of the owner and one for each book that was withdrawn. None is ever
 * rewritten.
 *
 * @param sittings what was decided, by the book's day and in the order of the sittings
 * @param withdrawals what was taken back, by the book's day
 */
record DecisionFiles(List<Sitting> sittings, List<Withdrawal> withdrawals) {
    static final String FOLDER = "decisions";

    static final String ENDING = ".json";
    private static final String WITHDRAWN = "withdrawn_on";

    DecisionFiles {
        sittings = List.copyOf(sittings);
        withdrawals = List.copyOf(withdrawals);
    }

    /**
     * A coming book that was taken back.
     *
     * @param file name of its record
     * @param effective first day that the book would have had
     * @param withdrawnOn day it was taken back
     * @param sittings names of the records of what was decided for it
     */
    record Withdrawal(String file, int effective, int withdrawnOn, List<String> sittings) {
        private static Withdrawal read(String file, JsonObject record) throws IOException {
            List<String> sittings = new ArrayList<>();
            for (JsonObject sitting : record.objects("withdraws")) {
                sittings.add(sitting.text("file"));
            }
            return new Withdrawal(
                    file, Sitting.day(record.text("effective")), Sitting.day(record.text(WITHDRAWN)), sittings);
        }
    }

    /**
     * Reads the decisions of a shop.
     *
     * @throws Refusal naming the file, where one is not as it was written
     */
    static DecisionFiles of(Path shop) {
        List<Sitting> sittings = new ArrayList<>();
        List<Withdrawal> withdrawals = new ArrayList<>();
        for (Path file : Inputs.files(shop.resolve(FOLDER), ENDING)) {
            String name = file.getFileName().toString();
            try {
                JsonObject record =
                        SealedRecord.read(Files.readString(file, StandardCharsets.UTF_8), DecisionRecord.NAMES);
                if (record.has(WITHDRAWN)) {
                    withdrawals.add(Withdrawal.read(name, record));
                } else {
                    sittings.add(Sitting.read(name, record));
                }
            } catch (IOException | DateTimeException | ArithmeticException | NumberFormatException e) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        file + ": found something else than benchtrue adopt wrote (" + e.getMessage()
                                + "). Put the file back from a copy.",
                        e);
            }
        }
        sittings.sort(Comparator.comparingInt(Sitting::effective)
                .thenComparing(sitting -> sitting.file().length())
                .thenComparing(Sitting::file));
        return new DecisionFiles(sittings, withdrawals);
    }

    /** Returns the sittings that were not taken back. */
    List<Sitting> standing() {
        return sittings.stream()
                .filter(sitting -> withdrawals.stream()
                        .noneMatch(withdrawal -> withdrawal.sittings().contains(sitting.file())))
                .toList();
    }

    /** Returns the sittings for the book of a day that were not taken back. */
    List<Sitting> standing(int effective) {
        return standing().stream()
                .filter(sitting -> sitting.effective() == effective)
                .toList();
    }
}
