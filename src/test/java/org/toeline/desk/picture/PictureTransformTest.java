package org.toeline.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;

class PictureTransformTest {

    @Test
    void zoomLeavesWhatIsUnderThePointer() {
        PictureTransform fitted = PictureTransform.fit(1280, 720, 900, 700);
        ImagePoint under = fitted.picture(321, 456);
        PictureTransform zoomed = fitted.zoomedAt(321, 456, 3.7).zoomedAt(321, 456, 0.9);
        assertThat(zoomed.deviceX(under)).isCloseTo(321, within(1e-9));
        assertThat(zoomed.deviceY(under)).isCloseTo(456, within(1e-9));
    }

    @Test
    void thereAndBack() {
        PictureTransform t = new PictureTransform(2.5, -40, 17).panned(3, -8);
        ImagePoint p = new ImagePoint(123.25, 456.5);
        assertThat(t.picture(t.deviceX(p), t.deviceY(p)).distancePx(p)).isLessThan(1e-9);
    }
}
