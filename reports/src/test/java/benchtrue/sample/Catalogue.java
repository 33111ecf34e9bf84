package benchtrue.sample;

import benchtrue.shop.Absent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The repair types of the invented shop, from the table {@code catalogue.csv} beside this class. */
final class Catalogue {
    /** Line of a repair type that stands in no price book. */
    static final int ONE_OFF = -1;

    private final List<RepairSpec> types;

    private Catalogue(List<RepairSpec> types) {
        this.types = types;
    }

    static Catalogue of(Tidiness tidiness) {
        List<RepairSpec> all = read();
        return new Catalogue(
                tidiness == Tidiness.UNTIDY
                        ? all
                        : all.stream()
                                .filter(type -> Absent.has(type.nowSeconds()))
                                .map(RepairSpec::withOneBook)
                                .toList());
    }

    private static List<RepairSpec> read() {
        try (InputStream table = Objects.requireNonNull(Catalogue.class.getResourceAsStream("catalogue.csv"));
                BufferedReader reader = new BufferedReader(new InputStreamReader(table, StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).map(RepairSpec::of).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    int size() {
        return types.size();
    }

    RepairSpec get(int type) {
        return types.get(type);
    }

    List<RepairSpec> all() {
        return types;
    }

    /** Returns a repair type's place, or {@link #ONE_OFF} for an empty key. */
    int place(String key) {
        for (int i = 0; i < types.size(); i++) {
            if (types.get(i).key().equals(key)) {
                return i;
            }
        }
        if (key.isEmpty()) {
            return ONE_OFF;
        }
        throw new IllegalArgumentException("no repair type " + key);
    }

    /** Returns how a type is written in the exports. */
    String key(int type) {
        return type == ONE_OFF
                ? benchtrue.shop.PriceBooks.ONE_OFF
                : types.get(type).key();
    }
}
