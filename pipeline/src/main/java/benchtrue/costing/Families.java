package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Names;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The family of each repair type as its newest book has it; a type without a book entry is its own.
 *
 * @param ofType code of each repair type's family
 */
public record Families(Names names, int[] ofType) {
    public static Families of(Ledger ledger) {
        List<String> byType = IntStream.range(0, ledger.repairTypes().size())
                .mapToObj(type -> ledger.repairTypes().name(type))
                .map(key -> ledger.books()
                        .type(key, ledger.asOf())
                        .map(type -> type.family())
                        .orElse(key))
                .toList();
        Names names = Names.of(byType);
        int[] codes = new int[byType.size()];
        Arrays.setAll(codes, type -> names.code(byType.get(type)));
        return new Families(names, codes);
    }

    /** Returns the family of a repair type. */
    public String ofType(int type) {
        return names.name(ofType[type]);
    }
}
