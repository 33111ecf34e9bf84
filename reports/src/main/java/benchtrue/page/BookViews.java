package benchtrue.page;

import java.util.List;

/** What price lists, the table for who writes quotes and explained prices say, as text ready to be escaped and set. */
final class BookViews {
    private BookViews() {}

    /**
     * @param title of the page
     * @param lists each on pages of its own
     */
    record Prices(String title, List<PriceSheet> lists) {}

    /**
     * @param title with the first day
     * @param summary how much changes
     * @param before heading of what was; empty for a shop's first book
     * @param after heading of what is or will be
     */
    record PriceSheet(String title, String summary, String before, String after, List<Family> families) {}

    record Family(String name, List<Price> rows) {}

    /** @param mark what became of it; empty where it stays */
    record Price(String repair, String hoursBefore, String priceBefore, String hours, String price, String mark) {}

    /**
     * @param title of the page
     * @param books which price book is in force and which are to come
     */
    record Quotes(String title, String books, List<QuoteFamily> families) {}

    /** @param longer what makes its repairs longer; empty where nothing surely does */
    record QuoteFamily(String name, String longer, List<Quote> rows) {}

    /**
     * @param coming hours and price from a day on; empty where nothing else is decided
     * @param fits hours that fit the shares of jobs
     */
    record Quote(
            String repair,
            String key,
            String hours,
            String price,
            List<String> coming,
            List<String> fits,
            List<String> lookFor) {}

    /** @param title of the page */
    record Explained(String title, List<Explanation> repairs) {}

    /**
     * One repair's price, for the customer.
     *
     * @param id where links land
     * @param quote hours and price
     * @param coming hours and price from a day on; empty where nothing else is decided
     * @param done what is done
     * @param rests what the hours rest on
     */
    record Explanation(String id, String repair, String quote, List<String> coming, List<String> done, String rests) {}
}
