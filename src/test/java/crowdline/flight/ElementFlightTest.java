package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.body.Attitude;
import crowdline.flight.body.Rig;
import crowdline.show.figure.Element;
import org.junit.jupiter.api.Test;

class ElementFlightTest {
    private static ElementFlight of(Element element) {
        return new ElementFlight(0, element, 1, 2, 3, new Attitude(0, 0), new Attitude(0, 0));
    }

    @Test
    void aLineEndsAtItsHeightOrItsPlace() {
        assertThat(of(Rig.line(Element.Until.FEET, 1000)).ends()).isEqualTo(new ElementFlight.AtHeight(304.8));
        assertThat(of(Rig.line(Element.Until.ALONG_M, -250)).ends()).isEqualTo(new ElementFlight.AtPlace(-250));
    }

    @Test
    void anythingElseEndsOtherwise() {
        assertThat(of(Rig.line(Element.Until.SECONDS, 5)).ends()).isEqualTo(ElementFlight.Ends.OTHERWISE);
        assertThat(of(Rig.line(Element.Until.METRES, 5)).ends()).isEqualTo(ElementFlight.Ends.OTHERWISE);
        assertThat(of(Rig.pullRound(90, 100)).ends()).isEqualTo(ElementFlight.Ends.OTHERWISE);
    }

    @Test
    void isCalledWhatItIs() {
        assertThat(of(Rig.pullRound(90, 100)).name())
                .isEqualTo(ElementWords.of(Rig.pullRound(90, 100)))
                .isNotBlank();
    }
}
