package benchtrue.page;

import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** What to mind before acting on the review. Local codes and licensed practice come first. */
final class Cautions {
    private static final TreeMap<String, String> HAZARDS = new TreeMap<>();

    static {
        HAZARDS.put(
                "flammable-finish", "flammable finish: no flame or spark, rags in a closed metal can, overspray out");
        HAZARDS.put("solvent", "solvents: ventilation and the right gloves and cartridge");
        HAZARDS.put("isocyanate", "isocyanates: supplied air and health checks where the law asks for them");
        HAZARDS.put("dust", "dust: extraction at the source and a mask");
        HAZARDS.put("shell-dust", "shell dust: wet work or extraction, never dry without a mask");
        HAZARDS.put("old-lead-paint", "old paint may hold lead: test before sanding");
        HAZARDS.put("lead-solder", "lead solder: wash hands, fume extraction");
        HAZARDS.put("stored-voltage", "amplifiers store a deadly voltage: discharge and measure first");
        HAZARDS.put("string-tension", "string tension: slacken before the work, cover the eyes");
        HAZARDS.put("celluloid", "old celluloid decays and burns fiercely: keep it apart and cool");
        HAZARDS.put("protected-species", "protected species: papers are needed across borders");
        HAZARDS.put("buffing-wheel", "buffing wheels catch and throw: hold below the centre line");
        HAZARDS.put("superglue", "superglue fumes: ventilation, eyes covered");
    }

    private Cautions() {}

    static List<ReviewView.Caution> of(PageFormatter told) {
        List<ReviewView.Caution> cautions = new ArrayList<>();
        cautions.add(new ReviewView.Caution(
                "Quotes already given",
                "Accepted quotes keep their price when the book changes. Ask for approval before exceeding an estimate; what "
                        + "must be asked, and how, is local law."));
        cautions.add(new ReviewView.Caution(
                "Safe time",
                "Ventilation, cure, clamping and paperwork belong in the quote. Nothing here is a reason to shorten them, and "
                        + "hazardous work is never proposed downward."));
        String hazards = hazards(told);
        if (!hazards.isEmpty()) {
            cautions.add(new ReviewView.Caution("Hazards named in this price book", hazards + "."));
        }
        cautions.add(new ReviewView.Caution(
                "People",
                "These figures speak of repairs, not of people. Staff should know what their time entries are used for; "
                        + "overtime and time-rounding rules are local law. They are no ground for pay or discipline."));
        cautions.add(new ReviewView.Caution(
                "Other duties",
                "Deposits, unclaimed goods and liens, sales tax, and insurance of customers' property follow local law. "
                        + "Separately owned shops must not pool prices."));
        cautions.add(new ReviewView.Caution(
                "What this is",
                "Statistics from the shop's own records, for an owner's judgement. It gives no legal, tax or safety advice: "
                        + "local codes and licensed practice come first."));
        return cautions;
    }

    private static String hazards(PageFormatter told) {
        TreeSet<String> words = new TreeSet<>();
        for (RepairType type : told.review()
                .ledger()
                .books()
                .inForce(told.review().ledger().asOf())
                .types()
                .values()) {
            words.addAll(type.hazards());
        }
        return String.join(
                "; ",
                words.stream().map(word -> HAZARDS.getOrDefault(word, word)).toList());
    }
}
