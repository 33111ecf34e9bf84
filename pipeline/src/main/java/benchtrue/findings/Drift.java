package benchtrue.findings;

import java.util.List;

/**
 * Which repairs get slower.
 *
 * @param charts one a repair type that has jobs with hours of their own, by code
 * @param slowings repair types that got slower, by code
 * @param falseAlarmsAYear most false alarms a year to expect from all charts together
 */
public record Drift(List<DriftChart> charts, List<Slowing> slowings, double falseAlarmsAYear) {
    public Drift {
        charts = List.copyOf(charts);
        slowings = List.copyOf(slowings);
    }
}
