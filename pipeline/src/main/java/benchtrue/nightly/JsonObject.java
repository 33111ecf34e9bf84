package benchtrue.nightly;

import com.google.gson.JsonElement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** An object that was read, whose fields are asked for by name and kind; what is not there or of another kind is refused. */
final class JsonObject {
    private final com.google.gson.JsonObject fields;

    private JsonObject(com.google.gson.JsonObject fields) {
        this.fields = fields;
    }

    static JsonObject of(JsonElement value) throws IOException {
        if (value == null || !value.isJsonObject()) {
            throw new IOException("found " + value + ", expected an object");
        }
        return new JsonObject(value.getAsJsonObject());
    }

    boolean has(String name) {
        return fields.has(name);
    }

    /** Refuses a field of any other name. */
    void expectNamesOf(Set<String> known) throws IOException {
        for (String name : fields.keySet()) {
            if (!known.contains(name)) {
                throw new IOException("found the unknown name " + name);
            }
        }
    }

    String text(String name) throws IOException {
        JsonElement value = fields.get(name);
        boolean text = value != null
                && value.isJsonPrimitive()
                && value.getAsJsonPrimitive().isString();
        return as(name, text, JsonElement::getAsString);
    }

    long whole(String name) throws IOException {
        JsonElement value = fields.get(name);
        boolean whole =
                value != null && value.isJsonPrimitive() && value.getAsString().matches("-?[0-9]{1,18}");
        return as(name, whole, JsonElement::getAsLong);
    }

    List<JsonObject> objects(String name) throws IOException {
        JsonElement value = fields.get(name);
        List<JsonObject> objects = new ArrayList<>();
        for (JsonElement element : as(name, value != null && value.isJsonArray(), JsonElement::getAsJsonArray)) {
            objects.add(of(element));
        }
        return objects;
    }

    /** Returns the fields of an object as they are written, by name. */
    Map<String, String> written(String name) throws IOException {
        JsonElement value = fields.get(name);
        Map<String, String> written = new TreeMap<>();
        as(name, value != null && value.isJsonObject(), JsonElement::getAsJsonObject)
                .entrySet()
                .forEach(field -> written.put(field.getKey(), field.getValue().toString()));
        return written;
    }

    private <T> T as(String name, boolean fits, Function<JsonElement, T> kind) throws IOException {
        if (!fits) {
            throw new IOException("found " + fields.get(name) + " under " + name + ", expected another kind of value");
        }
        return kind.apply(fields.get(name));
    }
}
