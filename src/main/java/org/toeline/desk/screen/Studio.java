package org.toeline.desk.screen;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.records.OwnRanges;
import org.toeline.desk.records.Records;
import org.toeline.desk.work.Background;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * What all screens share.
 *
 * @param model      the lesson on the desk
 * @param desk       puts lessons on the desk
 * @param records    the ledger it is kept in
 * @param assessment the findings of the lesson on the desk as they are now; empty before there are any
 * @param frames     the frame that each view of the lesson on the desk shows
 * @param ranges     what lessons are judged by
 * @param words      the words and units the coach wants
 * @param say        one sentence for the line at the bottom of the window
 * @param go         to another screen, by its id
 */
public record Studio(
        LessonModel model,
        LessonDesk desk,
        Records records,
        Background background,
        Supplier<Optional<Assessment>> assessment,
        Supplier<Map<View, Frame>> frames,
        OwnRanges ranges,
        Supplier<Words> words,
        Consumer<String> say,
        Consumer<String> go) {}
