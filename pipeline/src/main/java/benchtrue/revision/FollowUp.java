package benchtrue.revision;

/**
 * What became of a change of the price book: of one repair type, or of all that changed together. "Before" are lines quoted
 * while the version before was in force, "since" those quoted under the newest.
 *
 * @param hoursBefore hours per book hour before
 * @param hoursSince hours per book hour since, against the new book
 * @param quotesBefore what customers said before
 * @param quotesSince what they said since
 * @param conditioned accepted quotes since whose price a changed line with a condition moves
 * @param following those of them that are priced by it
 * @param forecast money that the change of price was to bring by now: change x jobs a year before x years since
 * @param realised money by now: labour of accepted lines, less the same lines at the old price
 */
public record FollowUp(
        BookedHours hoursBefore,
        BookedHours hoursSince,
        Acceptance quotesBefore,
        Acceptance quotesSince,
        int conditioned,
        int following,
        long forecast,
        long realised) {}
