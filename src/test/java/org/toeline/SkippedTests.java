package org.toeline;

import java.util.Map;
import java.util.TreeMap;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Counts at the end which tests proved nothing, since the machine lacks what they need, and says why. */
public final class SkippedTests implements TestExecutionListener {

    private final Map<String, Integer> reasons = new TreeMap<>();

    @Override
    public synchronized void executionSkipped(TestIdentifier test, String reason) {
        reasons.merge(reason, 1, Integer::sum);
    }

    @Override
    public synchronized void executionFinished(TestIdentifier test, TestExecutionResult result) {
        if (result.getStatus() == TestExecutionResult.Status.ABORTED) {
            reasons.merge(result.getThrowable().map(Throwable::getMessage).orElse("no reason given"), 1, Integer::sum);
        }
    }

    @Override
    public synchronized void testPlanExecutionFinished(TestPlan plan) {
        if (!reasons.isEmpty()) {
            int all = reasons.values().stream().mapToInt(Integer::intValue).sum();
            System.out.println(all + " tests were skipped and proved nothing:");
            reasons.forEach((reason, count) -> System.out.println("  " + count + " × " + reason));
            // where tests run side by side each class is a plan of its own, and says its own only
            reasons.clear();
        }
    }
}
