package org.toeline.desk.sheet;

import java.util.Optional;
import org.toeline.desk.bodymap.ItemNames;
import org.toeline.desk.keys.Act;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.picture.Aim;
import org.toeline.desk.text.Texts;
import org.toeline.mark.View;

/** What the keys do on the sheet. */
final class SheetActs {

    private static final double NUDGE_PX = 0.25;
    private static final double NUDGE_FAR_PX = 5;
    private static final double LIGHT_STEP = 0.1;

    private final Sheet sheet;
    private final SheetView view;
    private final LessonModel model;
    private final FilmActs films;

    SheetActs(Sheet sheet, SheetView view) {
        this.sheet = sheet;
        this.view = view;
        this.model = sheet.model();
        this.films = new FilmActs(sheet);
    }

    void perform(Act act) {
        switch (act) {
            case LEFT -> move(Aim.Step.NEAR, -1, 0);
            case RIGHT -> move(Aim.Step.NEAR, 1, 0);
            case UP -> move(Aim.Step.NEAR, 0, -1);
            case DOWN -> move(Aim.Step.NEAR, 0, 1);
            case LEFT_PIXEL -> move(Aim.Step.PIXEL, -1, 0);
            case RIGHT_PIXEL -> move(Aim.Step.PIXEL, 1, 0);
            case UP_PIXEL -> move(Aim.Step.PIXEL, 0, -1);
            case DOWN_PIXEL -> move(Aim.Step.PIXEL, 0, 1);
            case LEFT_FAR -> move(Aim.Step.FAR, -1, 0);
            case RIGHT_FAR -> move(Aim.Step.FAR, 1, 0);
            case UP_FAR -> move(Aim.Step.FAR, 0, -1);
            case DOWN_FAR -> move(Aim.Step.FAR, 0, 1);
            case CANCEL -> cancel();
            case DELETE -> model.delete();
            case UNDO -> turn(model::undo);
            case REDO -> turn(model::redo);
            case FACE_ON -> model.show(View.FACE_ON);
            case DOWN_THE_LINE -> model.show(View.DOWN_THE_LINE);
            case TEE -> model.show(View.TEE);
            case FRAME_BACK -> sheet.films().step(-1);
            case FRAME_ON -> sheet.films().step(1);
            case PLAY, SLOWER, FASTER, OTHER_WAY, REPEAT, IN_STEP, ONE_MOMENT -> films.perform(act);
            case ADDRESS -> sheet.clips().findAddress(model.large());
            case WHOLE -> view.fit();
            case EXCHANGE -> sheet.arrivals().exchange();
            case CLIP -> view.chooseClip();
            case SKIP -> model.skip();
            case SUGGEST -> sheet.suggest();
            case ACCEPT -> enter();
            case DRAW -> aim(view.aim()::draw);
            case MARK_ON -> model.selectBeside(1);
            case MARK_BACK -> model.selectBeside(-1);
            case ACCEPT_ALL -> model.suggestions().acceptAll();
            case STEADY -> sheet.steady();
            case AGAIN -> sheet.again();
            case LINES -> view.lines();
            case PIN -> sheet.pin();
            case BRIGHTER -> view.light(LIGHT_STEP, 0);
            case DARKER -> view.light(-LIGHT_STEP, 0);
            case MORE_CONTRAST -> view.light(0, LIGHT_STEP);
            case LESS_CONTRAST -> view.light(0, -LIGHT_STEP);
            case AS_FILMED -> view.asFilmed();
            case FULL_SCREEN,
                    COPY,
                    PRINT,
                    KEEP_STILL,
                    NEW,
                    OPEN,
                    KEPT,
                    KEYS,
                    GO_LESSON,
                    GO_PLAYERS,
                    GO_ACROSS,
                    GO_SHOTS,
                    GO_HAND_OVER,
                    GO_RANGES,
                    FIND -> throw new IllegalStateException(act + " is no act of the sheet's");
        }
    }

    /** A suggestion is right, unless one aims at its place oneself; what lies on the ground is answered; else what is to be placed is. */
    private void enter() {
        if (!view.aim().isShown() && model.suggestions().suggestion().isPresent()) {
            model.suggestions().accept();
        } else if (!view.answerGround()) {
            aim(view.aim()::press);
        }
    }

    /** Without a mouse one aims first. */
    private void aim(Runnable then) {
        Aim aim = view.aim();
        if (aim.isShown()) {
            then.run();
        } else if (aim.isOfUse()) {
            aim.begin();
            sheet.say(Texts.of("aim.begun"));
        }
    }

    private void move(Aim.Step step, int right, int down) {
        if (view.aim().isShown()) {
            view.aim().move(step, right, down);
            return;
        }
        double px =
                switch (step) {
                    case PIXEL -> 1;
                    case NEAR -> NUDGE_PX;
                    case FAR -> NUDGE_FAR_PX;
                };
        nudge(px * right, px * down);
    }

    /** What moves need not be what is selected: just after a click it is what was clicked. */
    private void nudge(double dxPx, double dyPx) {
        model.byKeys()
                .move(dxPx, dyPx)
                .filter(i -> !model.selected().equals(Optional.of(i)))
                .ifPresent(i -> sheet.say(Texts.of("nudged", ItemNames.of(i, sheet.words()))));
    }

    /** Drops what is half done and nothing that is finished. */
    private void cancel() {
        boolean dropped = view.drop();
        if (sheet.assistant().stop() || dropped) {
            view.update();
            sheet.say(Texts.of("cancelled"));
        } else if (model.repeating()) {
            model.leaveRepeat();
            sheet.say(Texts.of("again.left"));
        }
    }

    /** What was said of the change is not so any more. */
    private void turn(Runnable change) {
        sheet.say("");
        change.run();
    }
}
