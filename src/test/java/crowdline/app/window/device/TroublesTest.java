package crowdline.app.window.device;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Mark;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TroublesTest {
    private final List<List<String>> stood = new ArrayList<>();
    private final List<String> said = new ArrayList<>();
    private String pedal = "";
    private boolean used = true;
    private final Troubles troubles = new Troubles(
            List.of(
                    new Troubles.Device(() -> "", () -> true, "The receiver is giving positions"),
                    new Troubles.Device(() -> pedal, () -> used, "The pedal is connected")),
            marks -> stood.add(marks.stream().map(Mark::word).toList()),
            mark -> said.add(mark.word()));

    @Test
    void aTroubleStandsUntilItIsMended() {
        troubles.look();
        assertThat(stood).isEmpty();
        pedal = "Pedal not connected, the keys work: COM3 is not there; plug it in";
        troubles.look();
        troubles.look();
        assertThat(stood).containsExactly(List.of(pedal));
        pedal = "";
        troubles.look();
        assertThat(stood).hasSize(2).endsWith(List.of());
        assertThat(said).containsExactly("The pedal is connected");
    }

    @Test
    void aDeviceThatIsGivenUpIsNotCalledMended() {
        pedal = "Pedal not connected";
        troubles.look();
        pedal = "";
        used = false;
        troubles.look();
        assertThat(stood).endsWith(List.of());
        assertThat(said).isEmpty();
    }
}
