package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.toeline.flight.Shot;

/**
 * The shots of two setups in the order in which they were hit. Shots of one setup that follow each other are a run; hitting
 * the setups in turns (A, B, A, B) makes more runs, and what changes with time then falls on both setups.
 *
 * @param shots  in the order they were hit
 * @param second for each, whether it was hit with the second setup
 */
public record HitOrder(List<Shot> shots, List<Boolean> second) {

    public HitOrder {
        shots = List.copyOf(shots);
        second = List.copyOf(second);
        if (shots.size() != second.size()) {
            throw new IllegalArgumentException(shots.size() + " shots, " + second.size() + " setups");
        }
    }

    /** All shots of the first setup in one run, then all of the second. */
    public static HitOrder oneAfterTheOther(List<Shot> before, List<Shot> after) {
        List<Shot> all = new ArrayList<>(before);
        all.addAll(after);
        List<Boolean> second = new ArrayList<>();
        before.forEach(s -> second.add(false));
        after.forEach(s -> second.add(true));
        return new HitOrder(all, second);
    }

    /**
     * Shots of two setups hit in turns.
     *
     * @param turns for each shot in the order they were hit, whether it was hit with the second setup: so many yes and no as
     *     there are shots of either
     */
    public static HitOrder inTurns(List<Shot> first, List<Shot> second, List<Boolean> turns) {
        Iterator<Shot> ofFirst = first.iterator();
        Iterator<Shot> ofSecond = second.iterator();
        List<Shot> all =
                turns.stream().map(later -> (later ? ofSecond : ofFirst).next()).toList();
        return new HitOrder(all, turns);
    }

    /** How many runs there are. */
    public int runs() {
        int runs = shots.isEmpty() ? 0 : 1;
        for (int i = 1; i < second.size(); i++) {
            runs += second.get(i).equals(second.get(i - 1)) ? 0 : 1;
        }
        return runs;
    }

    /** Whether each setup was hit in at least two runs. */
    public boolean inTurns() {
        return runs() >= 4;
    }

    /** The shots of the first setup or of the second, in the order they were hit. */
    public List<Shot> of(boolean wanted) {
        List<Shot> some = new ArrayList<>();
        for (int i = 0; i < shots.size(); i++) {
            if (second.get(i) == wanted) {
                some.add(shots.get(i));
            }
        }
        return some;
    }

    boolean[] seconds() {
        boolean[] all = new boolean[second.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = second.get(i);
        }
        return all;
    }
}
