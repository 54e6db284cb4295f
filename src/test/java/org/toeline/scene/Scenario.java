package org.toeline.scene;

import java.util.Map;
import org.toeline.camera.Camera;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;

/**
 * A lesson to be filmed: who stands how, with which club, and where the cameras are.
 *
 * @param id         name of its folder
 * @param handedness which way the player swings; the world and the cameras are written as for a right-handed one, and
 *                   a left-handed player's pictures are the mirror images
 * @param floor      the ends of the two rods, in the world frame (origin under the ball)
 * @param cameras    one for each view; lenses without distortion, for a picture of {@link #WIDTH} × {@link #HEIGHT}
 * @param wall       colour of the bay's walls, 0xRRGGBB
 * @param panel      colour of their lower part
 */
public record Scenario(
        String id,
        Handedness handedness,
        Build build,
        Address address,
        ClubModel club,
        Outfit outfit,
        FloorLayout floor,
        Map<View, Camera> cameras,
        int wall,
        int panel) {

    public static final int WIDTH = 1280;
    public static final int HEIGHT = 720;

    public Scenario {
        cameras = Map.copyOf(cameras);
        for (Camera camera : cameras.values()) {
            if (camera.lens().k1() != 0 || camera.lens().k2() != 0) {
                throw new IllegalArgumentException("the lens is distorted; scenes are filmed without distortion only");
            }
        }
    }

    /** The camera of a view; for a left-handed player it maps to the mirrored picture. */
    public Camera camera(View view) {
        Camera camera = cameras.get(view);
        if (camera == null) {
            throw new IllegalArgumentException("scenario “" + id + "” has no " + view.id() + " camera");
        }
        return camera;
    }

    /** Where every landmark is at a moment of the clips, world frame; crown and ground as at address. */
    public Map<Landmark, WorldPoint> landmarks(double timeS) {
        return landmarks(Motion.at(timeS));
    }

    /** Where every landmark is at address, without any sway. */
    public Map<Landmark, WorldPoint> landmarks() {
        return landmarks(Deviation.NONE);
    }

    private Map<Landmark, WorldPoint> landmarks(Deviation deviation) {
        Poser poser = poser();
        Map<Landmark, WorldPoint> all = poser.at(deviation).landmarks();
        all.put(Landmark.CROWN, Stage.crown(poser.at(Deviation.NONE), club));
        all.put(Landmark.GROUND, WorldPoint.ORIGIN);
        return all;
    }

    /** Centre of the ball, world frame. */
    public WorldPoint ball() {
        return club.ball();
    }

    Poser poser() {
        return new Poser(build, address, club);
    }
}
