package benchtrue.nightly;

import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.costing.Restatement;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** What a night tells of a shop with restated months and rows set aside. */
final class Reviewed {
    private Reviewed() {}

    static Review shop(ShopBuilder shop, List<Restatement> restatements, SortedMap<String, Long> setAside) {
        Review plain = ReviewOf.shop(shop);
        return new Review(
                plain.settings(),
                plain.ledger(),
                plain.jobs(),
                plain.costs(),
                plain.calendar(),
                plain.findings(),
                plain.revision(),
                plain.costs().balances(),
                plain.notices(),
                restatements,
                setAside,
                List.of(),
                Optional.empty());
    }
}
