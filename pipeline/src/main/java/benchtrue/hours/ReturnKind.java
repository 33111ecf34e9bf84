package benchtrue.hours;

/** Why a line is not a job of its own. */
enum ReturnKind {
    /** A job of its own; new damage and settling outside the free weeks are. */
    NONE,
    /** Puts an earlier line right for reasons of the shop's own. */
    FAILURE,
    /** Free adjustment within the weeks that the earlier line promised: part of its price. */
    SETTLING
}
