package benchtrue.findings;

import benchtrue.ShopBuilder;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;

/** A built shop taken through the stages before the verdicts; its book prices a bench hour at 100. */
final class JudgedShop {
    private JudgedShop() {}

    static CostedLines costs(ShopBuilder shop) {
        return new CostLines().cost(new SplitHours().split(shop.build(), Settings.DEFAULTS), Settings.DEFAULTS);
    }

    static Findings find(ShopBuilder shop) {
        return find(shop, Settings.DEFAULTS);
    }

    static Findings find(ShopBuilder shop, Settings settings) {
        return new FindVerdicts().find(costs(shop), settings);
    }
}
