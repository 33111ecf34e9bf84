package benchtrue.nightly;

import benchtrue.costing.CostedLines;
import benchtrue.shop.Balance;
import java.util.ArrayList;
import java.util.List;

/** Proves that nothing was lost between the exports and the results. */
final class ProveBalances {
    private static final String HOURS = "hours";

    private ProveBalances() {}

    /**
     * Returns every balance of rows, hours, money and open tickets, the hours followed to where they ended.
     *
     * @param read what was read, in which the ledger is one term
     * @param more balances of later stages
     * @throws IllegalStateException where one fails, which is a fault of the program: nothing is published
     */
    static List<Balance> prove(List<Balance> read, CostedLines costs, Balance... more) {
        List<Balance> balances = new ArrayList<>();
        for (Balance balance : read) {
            boolean followed = balance.name().equals(HOURS);
            balances.add(followed ? follow(balance, costs.jobs().placed()) : balance);
        }
        balances.addAll(costs.balances());
        balances.addAll(List.of(more));
        for (Balance balance : balances) {
            if (!balance.holds()) {
                throw new IllegalStateException("The balance of " + balance.name() + " fails: " + balance);
            }
        }
        return balances;
    }

    /** Puts the places where the ledger's hours ended in the place of the ledger. */
    private static Balance follow(Balance balance, List<Balance.Term> placed) {
        List<Balance.Term> terms = new ArrayList<>(placed);
        balance.terms().stream()
                .filter(term -> !term.name().equals(Balance.IN_LEDGER))
                .forEach(terms::add);
        return new Balance(balance.name(), balance.unit(), balance.read(), terms);
    }
}
