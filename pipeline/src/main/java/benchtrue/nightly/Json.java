package benchtrue.nightly;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import com.google.gson.Strictness;
import java.io.IOException;
import java.util.Map;

/** Values as RFC 8259 text, two spaces a level, in the order they are given; and such text read back. */
public final class Json {
    private static final Gson GSON = new GsonBuilder()
            .setPrettyPrinting()
            .disableHtmlEscaping()
            .setStrictness(Strictness.STRICT)
            .create();

    private Json() {}

    /**
     * Returns the text of an object of maps, lists, text, numbers and booleans.
     *
     * @throws IllegalArgumentException where a number is not finite
     */
    public static String text(Map<String, ?> value) {
        return GSON.toJson(value) + "\n";
    }

    /**
     * Returns the object that a text holds.
     *
     * @throws IOException where it is no JSON, or not an object
     */
    static JsonObject read(String text) throws IOException {
        try {
            return JsonObject.of(GSON.fromJson(text, JsonElement.class));
        } catch (JsonParseException e) {
            throw new IOException("not as it was written: " + e.getMessage(), e);
        }
    }
}
