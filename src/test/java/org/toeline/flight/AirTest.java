package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Density, viscosity and pressure of the air against published values. */
class AirTest {

    /** Dry air at 20 °C and 101 325 Pa: 1.204 kg/m³ (Penner 2001); 15 °C: 1.2250 (ISO 2533). */
    @Test
    void dryAir() {
        assertThat(Air.of(20, 101_325, 0).densityKgPerM3()).isCloseTo(1.204, within(0.0006));
        assertThat(Air.of(15, 101_325, 0).densityKgPerM3()).isCloseTo(1.2250, within(0.0007));
    }

    /** Kinematic viscosity at 15 °C at sea level, 1.4607e-5 m²/s (ISO 2533); at 20 °C about 1.51e-5 (Penner 2001). */
    @Test
    void viscosity() {
        assertThat(Air.of(15, 101_325, 0).viscosityM2PerS()).isCloseTo(1.4607e-5, within(1.5e-8));
        assertThat(Air.of(20, 101_325, 0).viscosityM2PerS()).isCloseTo(1.51e-5, within(1e-7));
    }

    /** Saturation pressure at 20 °C about 2339 Pa (steam tables, from memory): water lightens the air by 0.378 of it. */
    @Test
    void moistAirIsLighter() {
        assertThat(MoistAir.saturationPa(293.15)).isCloseTo(2339, within(2.0));
        double lighter =
                Air.of(20, 101_325, 0).densityKgPerM3() - Air.of(20, 101_325, 1).densityKgPerM3();
        assertThat(lighter).isCloseTo(1.204 * 0.378 * 2339 / 101_325, within(0.0002));
    }

    /** Pressure at 1000 m 89 874.6 Pa and at 2000 m 79 495.2 Pa (ISO 2533, from memory). */
    @Test
    void pressureFallsWithAltitude() {
        assertThat(Air.pressureAtPa(1000)).isCloseTo(89_874.6, within(5.0));
        assertThat(Air.pressureAtPa(2000)).isCloseTo(79_495.2, within(5.0));
        assertThat(Air.atAltitude(20, 1600, 0.4).densityKgPerM3()).isLessThan(1.0);
    }

    /** Thin air: less drag and less lift; a drive from 1600 m goes farther. */
    @Test
    void highPlacesCarryFarther() {
        Launch drive = Launch.straight(67, 13, 2600);
        double low = new Trajectory(Air.atAltitude(20, 0, 0.5), SmitsSmith.WITH_REYNOLDS_TERM)
                .fly(drive)
                .carryM();
        double high = new Trajectory(Air.atAltitude(20, 1600, 0.5), SmitsSmith.WITH_REYNOLDS_TERM)
                .fly(drive)
                .carryM();
        assertThat(high).isGreaterThan(low * 1.02);
    }

    @Test
    void refusesWhatNoWeatherIs() {
        assertThatThrownBy(() -> Air.of(72, 101_325, 0.5))
                .hasMessageContaining("72")
                .hasMessageContaining("50");
        assertThatThrownBy(() -> Air.of(20, 1013, 0.5)).hasMessageContaining("10.13 hPa");
        assertThatThrownBy(() -> Air.of(20, 101_325, 50)).hasMessageContaining("0 to 100");
        assertThatThrownBy(() -> Air.USUAL.withWind(60, 0)).hasMessageContaining("60");
    }
}
