package org.toeline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.flight.Shot;
import org.toeline.flight.compare.HitOrder;

/**
 * Two setups that one table names, with the shots of both that count.
 *
 * @param heading under which they stand
 * @param first   the one that was hit first
 * @param order   their shots in the order they were hit
 * @param neither how many shots of the table name no setup
 */
record SetupsOfTable(String heading, String first, String second, HitOrder order, int neither) {

    /** The setups under a heading, in the order in which they were first hit. */
    static List<String> names(String heading, ShotsCommand.Setup table) {
        return named(heading, table).stream()
                .map(Shot::setup)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
    }

    /** The two of them; none where there are not two, or where shots of several clubs or players would be thrown together. */
    static Optional<SetupsOfTable> under(String heading, ShotsCommand.Setup table) {
        List<String> names = names(heading, table);
        if (names.size() != 2 || !table.pooledBeside(heading).isEmpty()) {
            return Optional.empty();
        }
        List<Shot> named = named(heading, table);
        List<Shot> shots = new ArrayList<>();
        List<Boolean> second = new ArrayList<>();
        int neither = 0;
        for (int i = 0; i < named.size(); i++) {
            String name = named.get(i).setup();
            if (name.isEmpty()) {
                neither++;
            } else if (table.aside(i).isEmpty()) {
                shots.add(table.figures().shots().get(i));
                second.add(name.equals(names.get(1)));
            }
        }
        return Optional.of(
                new SetupsOfTable(heading, names.get(0), names.get(1), new HitOrder(shots, second), neither));
    }

    private static List<Shot> named(String heading, ShotsCommand.Setup table) {
        return table.table().imported().inSetups(heading).shots();
    }
}
