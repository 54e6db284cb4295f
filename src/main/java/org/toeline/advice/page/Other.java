package org.toeline.advice.page;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.toeline.advice.Advice;
import org.toeline.advice.Finding;
import org.toeline.advice.FirstThing;
import org.toeline.advice.Topic;
import org.toeline.advice.Verdict;
import org.toeline.reading.ReadingKind;

/** What is out of range besides the one thing to change first, and does not follow from it. */
final class Other {

    private static final int MOST = 2;

    private Other() {}

    /** In the order of the findings, one a topic. */
    static List<Finding> of(Advice advice, FirstThing first) {
        Set<Topic> said = EnumSet.of(Topic.of(first.finding().kind()));
        for (ReadingKind kind : first.mayFollow()) {
            said.add(Topic.of(kind));
        }
        List<Finding> others = new ArrayList<>();
        for (Finding finding : advice.findings()) {
            if (others.size() < MOST
                    && finding.verdict().filter(Verdict::isOut).isPresent()
                    && said.add(Topic.of(finding.kind()))) {
                others.add(finding);
            }
        }
        return List.copyOf(others);
    }
}
