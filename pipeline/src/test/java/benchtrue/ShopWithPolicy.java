package benchtrue;

import benchtrue.settings.Policy;
import benchtrue.settings.Settings;

/** The settings of a shop that decided on a policy and on nothing else. */
public final class ShopWithPolicy {
    private ShopWithPolicy() {}

    public static Settings settings(Policy policy) {
        Settings d = Settings.DEFAULTS;
        return new Settings(
                d.currency(),
                d.zone(),
                d.locale(),
                d.shopRate(),
                d.burden(),
                d.tolerance(),
                d.materiality(),
                d.falseDiscovery(),
                d.resamples(),
                policy,
                d.people(),
                d.wallCopy(),
                d.seed());
    }
}
