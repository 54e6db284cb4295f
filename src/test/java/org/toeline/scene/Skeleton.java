package org.toeline.scene;

import java.util.EnumMap;
import java.util.Map;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;

/** Landmarks, joints and bones of the player at one moment; made by {@link Poser}. */
final class Skeleton {

    final Map<Bone, Frame> bones = new EnumMap<>(Bone.class);
    final Map<Landmark, Vec> marks = new EnumMap<>(Landmark.class);
    /** Centres of the shoulder joints, below and inside the bony tips. */
    Vec leadSocket = Vec.ZERO;

    Vec trailSocket = Vec.ZERO;
    /** Where each hand closes round the grip. */
    Vec leadHold = Vec.ZERO;

    Vec trailHold = Vec.ZERO;

    Vec at(Landmark landmark) {
        Vec p = marks.get(landmark);
        if (p == null) {
            throw new IllegalStateException("the pose lacks " + landmark.id());
        }
        return p;
    }

    Frame frame(Bone bone) {
        Frame f = bones.get(bone);
        if (f == null) {
            throw new IllegalStateException("the pose lacks " + bone);
        }
        return f;
    }

    Map<Landmark, WorldPoint> landmarks() {
        Map<Landmark, WorldPoint> all = new EnumMap<>(Landmark.class);
        marks.forEach((landmark, p) -> all.put(landmark, p.world()));
        return all;
    }

    /** The middle joint of a limb of two lengths between two ends, bent towards {@code pole}. */
    static Vec bend(Vec from, Vec to, double firstM, double secondM, Vec pole) {
        Vec d = to.minus(from);
        double reach = d.length();
        if (reach >= firstM + secondM) {
            return from.towards(to, firstM / (firstM + secondM));
        }
        Vec axis = d.unit();
        double along = (firstM * firstM - secondM * secondM + reach * reach) / (2 * reach);
        double off = Math.sqrt(Math.max(0, firstM * firstM - along * along));
        return from.plus(axis.times(along)).plus(pole.squareTo(axis).times(off));
    }
}
