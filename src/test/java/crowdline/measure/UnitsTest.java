package crowdline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** The yard and pound agreement of 1959 and the hydrographic conference of 1929 fixed these. */
class UnitsTest {

    @Test
    void conversionsAreExact() {
        assertThat(Units.mFromFt(1000)).isEqualTo(304.8);
        assertThat(Units.ftFromM(304.8)).isCloseTo(1000, within(1e-9));
        assertThat(Units.mpsFromKt(3600)).isCloseTo(1852, within(1e-9));
        assertThat(Units.ktFromMps(1852)).isCloseTo(3600, within(1e-9));
        assertThat(Units.mpsFromKmh(90)).isCloseTo(25, within(1e-12));
        assertThat(Units.milesFromM(5280 * 0.3048)).isCloseTo(1, within(1e-12));
    }

    /** NIST SP 811 (2008), appendix B.8: horsepower (550 ft·lbf/s) = 745.6999 W. */
    @Test
    void aHorsepowerIsAsPublished() {
        assertThat(Units.kwFromHp(1)).isCloseTo(0.7456999, within(5e-8));
        assertThat(Units.hpFromKw(Units.kwFromHp(180))).isCloseTo(180, within(1e-9));
    }

    @Test
    void eightInTenLieInTheBand() {
        NormalDistribution normal = NormalDistribution.of(0, 1);
        assertThat(normal.probability(-EightInTen.HALF_WIDTH, EightInTen.HALF_WIDTH))
                .isCloseTo(0.8, within(1e-12));
    }
}
