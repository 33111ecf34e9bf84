package benchtrue.mapping;

import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.shop.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes {@code shop-draft.toml}; one that a person has changed is never written over. */
public final class WriteDraft {
    /** The file's name in the shop folder. */
    public static final String FILE = "shop-draft.toml";

    private static final String SEAL = "# unchanged since it was drafted: ";

    /**
     * Writes the text of a draft.
     *
     * @return where it lies
     * @throws Refusal where a draft lies there that a person has changed, or it can't be written
     */
    public Path write(Path shop, String text) {
        Path file = shop.resolve(FILE);
        try {
            if (Files.exists(file) && !isAsDrafted(Files.readString(file, StandardCharsets.UTF_8))) {
                throw new Refusal(
                        ExitCode.CANNOT_WRITE,
                        FILE + ": found changes of yours, expected a draft that nobody has touched. Rename it to "
                                + ReadSettings.FILE + " to use it, or take it out to have a new one.");
            }
            Files.writeString(file, text + SEAL + digest(text) + "\n", StandardCharsets.UTF_8);
            return file;
        } catch (IOException failed) {
            throw new Refusal(ExitCode.CANNOT_WRITE, FILE + ": can't be written: " + failed.getMessage() + ".", failed);
        }
    }

    private static boolean isAsDrafted(String text) {
        int seal = text.lastIndexOf(SEAL);
        return seal >= 0 && text.substring(seal).equals(SEAL + digest(text.substring(0, seal)) + "\n");
    }

    private static String digest(String text) {
        return Sha256.of(text.getBytes(StandardCharsets.UTF_8)).substring(0, 16);
    }
}
