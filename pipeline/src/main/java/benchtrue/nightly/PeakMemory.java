package benchtrue.nightly;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;

/** How much memory the program's data took at most. */
final class PeakMemory {
    private PeakMemory() {}

    /** Returns the sum of the heap pools' peaks, in bytes: an upper bound of what was in use at any one time. */
    static long bytes() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed())
                .sum();
    }
}
