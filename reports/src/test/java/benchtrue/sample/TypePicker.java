package benchtrue.sample;

import java.util.ArrayList;
import java.util.List;

/** Picks which repair types a visit is quoted for: by demand, with what comes with them. */
final class TypePicker {
    private static final int TRIES = 30;
    private static final int MOST = 6;

    private final World world;
    private final int[] companions;

    TypePicker(World world) {
        this.world = world;
        this.companions = world.types().stream()
                .mapToInt(type -> world.catalogue().place(type.companion()))
                .toArray();
    }

    /** Returns distinct repair types, 1 to 6 of them. */
    List<Integer> pick(Dice dice, int opened, int instrument) {
        double[] demand = world.demand()[world.history().secondBookOn(opened) ? 1 : 0][instrument];
        int wanted = 1 + dice.pick(World.LINES);
        List<Integer> types = new ArrayList<>(MOST);
        for (int i = 0; i < TRIES && types.size() < wanted; i++) {
            add(types, dice.pick(demand), dice, opened);
        }
        return types;
    }

    private void add(List<Integer> types, int type, Dice dice, int opened) {
        RepairSpec spec = world.catalogue().get(type);
        if (!room(types, type)) {
            return;
        }
        types.add(type);
        boolean together = dice.chance(spec.companionChance());
        int companion = companions[type];
        if (together && room(types, companion) && world.offers(companion, opened)) {
            types.add(companion);
        }
    }

    private boolean room(List<Integer> types, int type) {
        String group = world.catalogue().get(type).group();
        return types.size() < MOST
                && !types.contains(type)
                && (group.isEmpty()
                        || types.stream()
                                .noneMatch(other ->
                                        world.catalogue().get(other).group().equals(group)));
    }
}
