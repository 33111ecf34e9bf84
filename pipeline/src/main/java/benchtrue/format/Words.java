package benchtrue.format;

import java.util.Locale;
import java.util.Optional;

/** The data contract's words for the values of an enum: {@code OUR_FAULT} is written {@code our-fault}. */
public final class Words {
    private Words() {}

    /** Returns the contract's word for a value. */
    public static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the value that a contract's word names, whatever its case; empty where none does. */
    public static <E extends Enum<E>> Optional<E> parse(Class<E> kind, String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        for (E value : kind.getEnumConstants()) {
            if (of(value).equals(wanted)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }
}
