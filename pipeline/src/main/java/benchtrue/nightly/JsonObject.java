package benchtrue.nightly;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An object that was read, whose fields are asked for by name and kind; what is not there or of another kind is refused. */
final class JsonObject {
    private final Map<?, ?> fields;

    private JsonObject(Map<?, ?> fields) {
        this.fields = fields;
    }

    static JsonObject read(String text) throws IOException {
        return of(JsonReader.read(text));
    }

    private static JsonObject of(Object value) throws IOException {
        return new JsonObject(as(Map.class, value));
    }

    boolean has(String name) {
        return fields.containsKey(name);
    }

    String text(String name) throws IOException {
        return as(String.class, fields.get(name));
    }

    long whole(String name) throws IOException {
        return as(Long.class, fields.get(name));
    }

    List<JsonObject> objects(String name) throws IOException {
        List<JsonObject> objects = new ArrayList<>();
        for (Object value : as(List.class, fields.get(name))) {
            objects.add(of(value));
        }
        return objects;
    }

    private static <T> T as(Class<T> kind, Object value) throws IOException {
        if (!kind.isInstance(value)) {
            throw new IOException("found " + value + ", expected " + kind.getSimpleName());
        }
        return kind.cast(value);
    }
}
