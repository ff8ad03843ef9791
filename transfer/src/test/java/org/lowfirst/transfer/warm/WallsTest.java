package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Volume;

class WallsTest {

    @ParameterizedTest
    @EnumSource(WallMaterial.class)
    void aSizedWallIsMarkedAsAssumedAndHasItsMass(WallMaterial material) {
        Volume water = Volume.ofLitres(4.6);
        Wall wall = Walls.assumed(material, water, GaugePressure.ofBar(139));
        assertThat(wall.assumed()).isTrue();
        assertThat(wall.mass_kg())
                .isCloseTo(
                        Walls.assumedMass(material, water, GaugePressure.ofBar(139))
                                .kilograms(),
                        within(1e-12));
        assertThat(wall.outerArea_m2()).isGreaterThan(wall.innerArea_m2());
    }

    @Test
    void aWeighedWallIsNotMarkedAsAssumed() {
        assertThat(Walls.ofMass(WallMaterial.STEEL, Volume.ofLitres(10), new Mass(13), WallOrigin.STATED)
                        .assumed())
                .isFalse();
    }

    @Test
    void aCompositeWallHasALinerAndAWindingThatConductsBadly() {
        Wall wall = Walls.assumed(WallMaterial.COMPOSITE, Volume.ofLitres(2), GaugePressure.ofBar(200));
        assertThat(wall.layers()).hasSize(2);
        assertThat(wall.layers().get(1).halfResistance_KPerW())
                .isGreaterThan(100 * wall.layers().get(0).halfResistance_KPerW());
    }

    @Test
    void aShellAroundAShapeHasTheVolumeItWasMadeFor() {
        Shape inside = Shape.of(Volume.ofLitres(2.9));
        assertThat(inside.volume_m3()).isCloseTo(2.9e-3, within(1e-15));
        for (double shell : new double[] {1e-6, 1e-4, 1e-3, 1e-2}) {
            Shape outside = inside.grown(inside.thickness_m(shell));
            assertThat(outside.volume_m3() - inside.volume_m3()).isCloseTo(shell, within(1e-12 * shell + 1e-17));
        }
    }

    @Test
    void theEnergyOfALayerTurnsBackIntoItsTemperature() {
        WallLayer layer = new WallLayer(new Mass(2.3), 896, 0.46, 0.0);
        for (double t = 200; t < 500; t += 7) {
            assertThat(layer.temperature_K(layer.energy_J(t))).isCloseTo(t, within(1e-10));
            double slope = (layer.energy_J(t + 1e-3) - layer.energy_J(t - 1e-3)) / 2e-3;
            assertThat(slope).isCloseTo(layer.capacity_JPerK(t), within(1e-6 * slope));
        }
    }

    @Test
    void nonsenseIsRefusedWithAReason() {
        assertThatThrownBy(() -> Walls.ofMass(WallMaterial.STEEL, Volume.ofLitres(2), new Mass(0), WallOrigin.STATED))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("empty mass");
        assertThatThrownBy(() -> Walls.assumedMass(WallMaterial.STEEL, Volume.ofLitres(2), GaugePressure.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("service pressure");
    }
}
