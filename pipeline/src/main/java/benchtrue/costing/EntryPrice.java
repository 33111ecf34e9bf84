package benchtrue.costing;

/** What a time entry costs. */
interface EntryPrice {
    /** Returns the money of an entry of the ledger, rounded once; absent where it can't be known. */
    long of(int entry);
}
