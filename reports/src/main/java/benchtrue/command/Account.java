package benchtrue.command;

import benchtrue.format.Figures;
import benchtrue.shop.Balance;
import benchtrue.shop.Notice;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where everything that was read went, and what is doubtful about it, in words. */
final class Account {
    private final Figures figures;

    Account(Figures figures) {
        this.figures = figures;
    }

    List<String> balances(List<Balance> balances) {
        List<String> lines = new ArrayList<>();
        lines.add("What was read, and where it went:");
        balances.forEach(balance -> lines.add("  " + balance.name() + ": " + amount(balance, balance.read()) + " = "
                + balance.terms().stream()
                        .filter(term -> term.amount() != 0)
                        .map(term -> amount(balance, term.amount()) + " " + term.name())
                        .collect(Collectors.joining(" + "))));
        return lines;
    }

    private String amount(Balance balance, long amount) {
        return switch (balance.unit()) {
            case "seconds" -> figures.hours(amount);
            case "ten-thousandths" -> figures.price(amount);
            default -> figures.count(amount);
        };
    }

    List<String> notices(List<Notice> notices) {
        List<String> lines = new ArrayList<>();
        lines.add(notices.isEmpty() ? "Nothing doubtful." : "Used, but doubtful:");
        for (Notice notice : notices) {
            lines.add("  " + figures.count(notice.count()) + " x " + notice.words());
            notice.examples().forEach(example -> lines.add("      " + example));
        }
        return lines;
    }
}
