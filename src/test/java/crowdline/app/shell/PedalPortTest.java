package crowdline.app.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.app.window.device.PedalListener;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.HeardSignal;
import crowdline.telemetry.serial.SerialPorts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PedalPortTest {
    private final List<LearnedButtons> kept = new ArrayList<>();

    /** A desk whose ports are never opened. */
    private PedalListener desk(LearnedButtons learned) {
        return new PedalListener(
                learned,
                new SerialPorts(Path.of("serial")),
                () -> 0,
                (HeardSignal signal) -> {},
                kept::add,
                () -> "",
                work -> {});
    }

    @Test
    void aPortIsReadWithAndWithoutItsSpeed() {
        assertThat(PedalPort.of("/dev/ttyUSB0")).isEqualTo(new PedalPort("/dev/ttyUSB0", null));
        assertThat(PedalPort.of("COM3@19200")).isEqualTo(new PedalPort("COM3", 19_200));
    }

    @Test
    void aSpeedThatIsNoneIsRefusedWithWhatIsAllowed() {
        for (String wrong : List.of("COM3@fast", "COM3@", "COM3@5", "COM3@99999999999", "@9600")) {
            assertThatThrownBy(() -> PedalPort.of(wrong))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(
                            "the pedal's port is \"" + wrong + "\"; after the @ must stand its speed, 110 to 1000000"
                                    + " baud, as in /dev/ttyUSB0@19200");
        }
    }

    @Test
    void whereNoSpeedIsSaidTheSamePortKeepsItsOwn() {
        LearnedButtons before = LearnedButtons.NONE.withPort("COM3").withBaud(38_400);
        desk(before).use(PedalPort.of("COM3"));
        desk(before).use(PedalPort.of("COM4"));
        desk(before).use(PedalPort.of("COM3@1200"));
        assertThat(kept).extracting(LearnedButtons::baud).containsExactly(38_400, 9600, 1200);
    }
}
