package benchtrue.revision;

import benchtrue.format.Figures;
import benchtrue.format.Words;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Makes the next price book from the newest one before its day and the owner's decisions. */
public final class NextBook {
    private final PriceBook before;
    private final PriceBook against;
    private final SortedMap<String, Integer> decidedOnThisDraft;
    private final Figures figures;

    /**
     * Takes what the next book begins from.
     *
     * @param before the newest version adopted for a day not after that of the next
     * @param against the version that the draft stands against
     * @param decidedOnThisDraft repair types that were decided on the same draft already, each with the day from which that holds
     * @param figures how the shop's people read figures, for refusals
     */
    public NextBook(
            PriceBook before, PriceBook against, SortedMap<String, Integer> decidedOnThisDraft, Figures figures) {
        this.before = before;
        this.against = against;
        this.decidedOnThisDraft = decidedOnThisDraft;
        this.figures = figures;
    }

    /**
     * Returns the next version: the rows it begins from, with hours and price where the owner decided so.
     *
     * @param effective first day it is in force
     * @throws Refusal naming every cell, where a decision names an unknown repair type, was made on this draft before, stands
     *     against another book, goes below the shortest safe hours or the minimum charge, or keeps without a reason and a
     *     date; and where nothing at all was decided
     */
    public PriceBook decide(DecidedDraft draft, int effective) {
        List<CellFault> faults = new ArrayList<>();
        draft.decided().forEach(decision -> check(decision, effective).ifPresent(faults::add));
        draft.surcharges().forEach(decision -> check(decision).ifPresent(faults::add));
        draft.expectSound(faults);
        if (draft.isOpen()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    draft.file()
                            + ": found no decision in it, expected take, keep or own on at least one row. Nothing was written.");
        }
        Map<String, RepairType> types = new TreeMap<>(before.types());
        for (Decision decision : draft.decided()) {
            if (decision.choice() != Decision.Choice.KEEP) {
                types.computeIfPresent(decision.repairType(), (key, type) -> changed(type, decision));
            }
        }
        return new PriceBook(effective, types, surcharges(draft));
    }

    private List<Surcharge> surcharges(DecidedDraft draft) {
        List<Surcharge> lines = new ArrayList<>(before.surcharges());
        for (SurchargeDecision decision : draft.surcharges()) {
            lines.removeIf(decision.line()::standsFor);
            if (decision.choice() != SurchargeDecision.Choice.DROP) {
                lines.add(decision.line());
            }
        }
        return lines;
    }

    private Optional<CellFault> check(SurchargeDecision decision) {
        Surcharge line = decision.line();
        Optional<Surcharge> stands =
                before.surcharges().stream().filter(line::standsFor).findFirst();
        if (decision.choice() == SurchargeDecision.Choice.DROP) {
            return stands.isPresent()
                    ? Optional.empty()
                    : Optional.of(
                            decision.fault("a line that the price book does not have", "take, own or nothing at all"));
        }
        if (before.type(line.repairType()).isEmpty() || line.seconds() <= 0 || line.labour() < 0) {
            return Optional.of(decision.fault(
                    "no hours above zero, or a repair type that is not in the price book",
                    "hours above zero, for a repair of the book that the next one begins from"));
        }
        return stands.filter(same -> same.seconds() == line.seconds() && same.labour() == line.labour())
                .map(same -> decision.fault(
                        "a line that the price book of " + figures.day(before.effective())
                                + " has already, at these hours and this price",
                        "each line adopted once; empty its yellow cells, or give it other hours"));
    }

    private Optional<CellFault> check(Decision decision, int effective) {
        Optional<RepairType> type = before.type(decision.repairType());
        if (type.isEmpty()) {
            return fault(decision, "a repair type that is not in the price book that the next one begins from");
        }
        Integer already = decidedOnThisDraft.get(decision.repairType());
        if (already != null) {
            return Optional.of(decision.fault(
                    "a row that was decided on this draft before, in force from " + LocalDate.ofEpochDay(already),
                    "each row decided once; empty its yellow cells, or decide it again on the draft of a later night"));
        }
        if (otherBook(decision)) {
            return Optional.of(decision.fault(
                    "hours or a price of a book that was changed since this draft",
                    "those of the newest adopted book; run benchtrue nightly and decide in the newest workbook"));
        }
        return decision.choice() == Decision.Choice.KEEP ? keep(decision, effective) : hours(decision, type.get());
    }

    private boolean otherBook(Decision decision) {
        Optional<RepairType> drafted = against.type(decision.repairType());
        return drafted.isEmpty()
                || drafted.get().bookSeconds() != decision.secondsBefore()
                || drafted.get().bookLabour() != decision.labourBefore();
    }

    private static Optional<CellFault> keep(Decision decision, int effective) {
        boolean holds = !decision.reason().isBlank() && Absent.has(decision.until()) && decision.until() > effective;
        return holds
                ? Optional.empty()
                : fault(
                        decision,
                        "keep without a reason, or without a date after the new book begins until which it holds");
    }

    private Optional<CellFault> hours(Decision decision, RepairType type) {
        if (Absent.has(type.leastSeconds()) && decision.seconds() < type.leastSeconds()) {
            return Optional.of(decision.fault(
                    figures.quote(decision.seconds()) + " below the shortest safe hours",
                    figures.quote(type.leastSeconds()) + " or more"));
        }
        if (decision.seconds() <= 0 || decision.labour() < Absent.firstOf(type.leastLabour(), 0)) {
            return fault(decision, "no hours above zero, or a price below the minimum charge");
        }
        return Optional.empty();
    }

    private static Optional<CellFault> fault(Decision decision, String found) {
        String expected = decision.choice() == Decision.Choice.KEEP
                ? "a reason and such a date beside it"
                : "a repair of the book, hours above zero and at least its minimum charge";
        return Optional.of(decision.fault(found + " (" + Words.of(decision.choice()) + ")", expected));
    }

    private static RepairType changed(RepairType type, Decision decision) {
        return type.at(decision.seconds(), decision.labour());
    }
}
