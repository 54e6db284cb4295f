package org.toeline.mark;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;

/**
 * All that the coach marked for one setup: the value from which everything else follows.
 *
 * @param views        at most one for each {@link View}, in any order
 * @param clickSigmaPx the coach's own click spread, pixels, used for new marks and wherever a mark states none
 * @param stature      how tall the player is, if somebody knows
 */
public record MarkSheet(
        Handedness handedness,
        Club club,
        Takes takes,
        FloorLayout floor,
        List<ViewMarks> views,
        double clickSigmaPx,
        Optional<Stature> stature) {

    /** The click spread assumed of a coach who has not yet marked anything twice, pixels. */
    public static final double USUAL_CLICK_SIGMA_PX = 2.0;

    public MarkSheet {
        views = List.copyOf(views);
        Finite.requirePositive(clickSigmaPx, "clickSigmaPx");
        Set<View> seen = EnumSet.noneOf(View.class);
        for (ViewMarks v : views) {
            if (!seen.add(v.view())) {
                throw new IllegalArgumentException(
                        Sentences.of(MarkSheet.class).of("view.twice", v.view().id()));
            }
            for (FloorMark mark : v.floorMarks()) {
                if (floor.point(mark.pointId()).isEmpty()) {
                    throw new IllegalArgumentException(Sentences.of(MarkSheet.class)
                            .of("view.no-floor-point", v.view().id(), mark.pointId()));
                }
            }
        }
    }

    /** A player of unknown height. */
    public MarkSheet(
            Handedness handedness,
            Club club,
            Takes takes,
            FloorLayout floor,
            List<ViewMarks> views,
            double clickSigmaPx) {
        this(handedness, club, takes, floor, views, clickSigmaPx, Optional.empty());
    }

    public static MarkSheet empty(Handedness handedness, Club club) {
        return new MarkSheet(handedness, club, Takes.SEPARATE, FloorLayout.NONE, List.of(), USUAL_CLICK_SIGMA_PX);
    }

    public Optional<ViewMarks> view(View view) {
        return views.stream().filter(v -> v.view() == view).findFirst();
    }

    /** This sheet with one view put in, in place of the one of the same kind where there is one. */
    public MarkSheet withView(ViewMarks changed) {
        List<ViewMarks> all = new ArrayList<>(views);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).view() == changed.view()) {
                all.set(i, changed);
                return withViews(all);
            }
        }
        all.add(changed);
        return withViews(all);
    }

    public MarkSheet withoutView(View view) {
        return withViews(views.stream().filter(v -> v.view() != view).toList());
    }

    private MarkSheet withViews(List<ViewMarks> changed) {
        return new MarkSheet(handedness, club, takes, floor, changed, clickSigmaPx, stature);
    }

    public MarkSheet withFloor(FloorLayout changed) {
        return new MarkSheet(handedness, club, takes, changed, views, clickSigmaPx, stature);
    }

    public MarkSheet withClub(Club changed) {
        return new MarkSheet(handedness, changed, takes, floor, views, clickSigmaPx, stature);
    }

    public MarkSheet withHandedness(Handedness changed) {
        return new MarkSheet(changed, club, takes, floor, views, clickSigmaPx, stature);
    }

    public MarkSheet withTakes(Takes changed) {
        return new MarkSheet(handedness, club, changed, floor, views, clickSigmaPx, stature);
    }

    public MarkSheet withClickSigmaPx(double changed) {
        return new MarkSheet(handedness, club, takes, floor, views, changed, stature);
    }

    public MarkSheet withStature(Optional<Stature> changed) {
        return new MarkSheet(handedness, club, takes, floor, views, clickSigmaPx, changed);
    }

    /** Whether somebody placed or accepted every mark. */
    public boolean isAccepted() {
        return views.stream().allMatch(ViewMarks::isAccepted);
    }

    /** The marks that somebody placed or accepted. */
    public MarkSheet onlyAccepted() {
        return withViews(views.stream().map(ViewMarks::onlyAccepted).toList());
    }
}
