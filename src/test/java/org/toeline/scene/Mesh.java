package org.toeline.scene;

/**
 * The surface of a part at address, as triangles, with what each corner needs to move, and the light it gets.
 *
 * @param at        x, y, z of each corner
 * @param normal    outward normal of each corner
 * @param triangles three corners each
 * @param bones     three bones a corner (ordinals)
 * @param weights   their weights
 * @param open      share of the sky each corner sees, 0 to 1
 * @param lit       share of the main light that reaches it, 0 to 1
 */
record Mesh(
        Part part,
        float[] at,
        float[] normal,
        int[] triangles,
        byte[] bones,
        float[] weights,
        float[] open,
        float[] lit) {

    int corners() {
        return at.length / 3;
    }
}
