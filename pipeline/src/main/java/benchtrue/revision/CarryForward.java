package benchtrue.revision;

import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Carries what changed in one price book into those adopted for later days: a row that a later book only took over follows,
 * a row that was decided for it stays. A book written by hand is never changed, and what comes after it follows that one.
 */
public final class CarryForward {
    private CarryForward() {}

    /**
     * Returns the later books as they are then, in their order.
     *
     * @param before the book as the later ones began from it
     * @param after the book in its place
     * @param later adopted books for later days, the earliest first
     */
    public static List<PriceBook> into(PriceBook before, PriceBook after, List<ComingBook> later) {
        List<PriceBook> carried = new ArrayList<>();
        PriceBook was = before;
        PriceBook is = after;
        for (ComingBook coming : later) {
            PriceBook follows = coming.decided().isEmpty() ? coming.book() : follow(was, is, coming);
            carried.add(follows);
            was = coming.book();
            is = follows;
        }
        return carried;
    }

    private static PriceBook follow(PriceBook was, PriceBook is, ComingBook coming) {
        Map<String, RepairType> types = new TreeMap<>(coming.book().types());
        types.replaceAll((key, type) -> {
            Optional<RepairType> old = was.type(key);
            Optional<RepairType> now = is.type(key);
            boolean tookOver = !coming.decided().containsKey(key) && old.isPresent() && type.quotesAs(old.get());
            return tookOver && now.isPresent()
                    ? type.at(now.get().bookSeconds(), now.get().bookLabour())
                    : type;
        });
        boolean tookOver = coming.book().surcharges().equals(was.surcharges());
        return new PriceBook(
                coming.book().effective(),
                types,
                tookOver ? is.surcharges() : coming.book().surcharges());
    }
}
