package benchtrue.calendar;

import benchtrue.ShopBuilder;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.hours.SplitHours;
import benchtrue.settings.Settings;

/** Takes a shop through the stages to its calendar. */
final class CalendarOf {
    private CalendarOf() {}

    static CostedLines costs(ShopBuilder shop) {
        return new CostLines().cost(new SplitHours().split(shop.build(), Settings.DEFAULTS), Settings.DEFAULTS);
    }

    static Calendar shop(ShopBuilder shop) {
        return new PlanCalendar().plan(costs(shop), Settings.DEFAULTS);
    }
}
