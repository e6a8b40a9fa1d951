package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Fix;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ReceiverSessionTest {
    private final TestClock clock = new TestClock();
    private final List<Fix> fixes = new ArrayList<>();
    private final FakePort port = new FakePort(clock, List.of(9600, 38_400, 115_200), 115_200);
    private final ReceiverSession session = new ReceiverSession(port, clock, fixes::add);
    private int tenth;

    @Test
    void speedIsFoundByWholeSentences() {
        fly(8);

        assertThat(port.opened).containsExactly(9600, 38_400, 115_200);
        assertThat(port.open).isEqualTo(1);
        assertThat(fixes).isNotEmpty();
        assertThat(session.status().baud()).isEqualTo(115_200);
        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.RECEIVING);
    }

    @Test
    void whileTheSpeedIsNotFoundTheStripSaysSo() {
        session.step();
        fly(1);

        ReceiverStatus status = session.status();
        assertThat(status.state()).isEqualTo(ReceiverStatus.State.SEARCHING);
        assertThat(status.baud()).isNull();
        assertThat(status.ageS()).isNull();
        assertThat(status.text()).isEqualTo("listening at 9,600 baud, nothing readable yet");
    }

    @Test
    void statusTellsRateAndAge() {
        fly(20);
        clock.passMs(100);

        ReceiverStatus status = session.status();
        assertThat(status.readingsPerS()).isCloseTo(5, within(0.1));
        assertThat(status.ageS()).isCloseTo(0.3, within(0.11));
        assertThat(status.lostShare()).isZero();
        assertThat(status.badShare()).isZero();
        assertThat(status.text())
                .startsWith("5.0 positions a second, the last 0.")
                .endsWith(" s ago");
    }

    @Test
    void lostAndDamagedSentencesAreToldAsShares() {
        fly(10);
        for (int i = 0; i < 100; i++) {
            String instant = instant();
            if (i % 10 == 3) {
                port.send(instant.replaceFirst("545", "546"));
            } else {
                port.send(instant);
            }
            step(200);
        }

        ReceiverStatus status = session.status();
        assertThat(status.badShare()).isCloseTo(0.05, within(0.01)); // one of the two sentences of each tenth instant
        assertThat(status.lostShare()).isCloseTo(0.1, within(0.02));
        assertThat(status.text()).contains("% lost, 5% damaged");
    }

    @Test
    void silenceIsToldWithItsLength() {
        fly(10);
        clock.passMs(4000);

        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.SILENT);
        assertThat(session.status().text()).isEqualTo("last position 4 s ago");
    }

    @Test
    void lostPositionIsToldApartFromSilence() {
        fly(10);
        for (int i = 0; i < 15; i++) {
            port.send("$GPRMC,,V,,,,,,,,,,N*53\r\n");
            step(200);
        }

        assertThat(session.status().text()).isEqualTo("lost its position 3 s ago");
    }

    @Test
    void receiverWithoutPositionYetSaysSo() {
        for (int i = 0; i < 60; i++) {
            port.send("$GPRMC,,V,,,,,,,,,,N*53\r\n");
            step(200);
        }

        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.NO_FIX);
        assertThat(session.status().text()).isEqualTo("has no position yet");
    }

    @Test
    void unpluggedReceiverIsFoundAgainAtItsSpeed() {
        fly(8);
        int before = fixes.size();
        port.unplug();

        assertThat(session.step()).isEqualTo(ReceiverSession.RETRY_MS);
        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.GONE);
        assertThat(port.open).isZero();
        assertThat(session.step()).isEqualTo(ReceiverSession.RETRY_MS);
        assertThat(session.status().text()).isEqualTo("ttyFAKE0 is not there; plug it in");

        port.plug();
        fly(2);
        assertThat(port.opened).endsWith(115_200).hasSize(4);
        assertThat(fixes.size()).isGreaterThan(before);
        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.RECEIVING);
    }

    @Test
    void refusedPortSaysWhatToDoAndIsTriedAgain() {
        port.refusal = new LinkException("Another program uses ttyFAKE0 (error 16); close that program", false);

        assertThat(session.step()).isEqualTo(ReceiverSession.RETRY_MS);
        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.REFUSED);
        assertThat(session.status().text()).contains("close that program");

        port.refusal = null;
        fly(8);
        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.RECEIVING);
    }

    @Test
    void releasedTwiceTheLinkIsClosedOnce() {
        session.step();
        session.release();
        session.release();

        assertThat(port.closes).isEqualTo(1);
        assertThat(session.status().state()).isEqualTo(ReceiverStatus.State.CLOSED);
    }

    @Test
    void streamIsReadToItsEndWithoutSearching() {
        byte[] bytes = (instant() + instant() + instant()).getBytes(StandardCharsets.US_ASCII);
        ReceiverSession stream =
                new ReceiverSession(new StreamOpener("input", new ByteArrayInputStream(bytes)), clock, fixes::add);
        int steps = 0;
        while (stream.step() >= 0) {
            assertThat(++steps).isLessThan(10);
        }

        assertThat(fixes).hasSize(3);
        assertThat(stream.status().state()).isEqualTo(ReceiverStatus.State.ENDED);
        assertThat(stream.status().text()).isEqualTo("input has come to its end");
    }

    /** Five instants a second for so long. */
    private void fly(int seconds) {
        for (int i = 0; i < seconds * 5; i++) {
            port.send(instant());
            step(200);
        }
    }

    /** Reads what waits; the step that finds nothing more lets 200 ms pass. */
    private void step(int ms) {
        long endNs = clock.getAsLong() + ms * 1_000_000L;
        while (clock.getAsLong() < endNs) {
            long waitMs = session.step();
            clock.passMs(Math.max(0, waitMs));
        }
    }

    private String instant() {
        int second = tenth / 10;
        String time = String.format(Locale.ROOT, "12%02d%02d.%d", second / 60, second % 60, tenth % 10);
        tenth += 2;
        return sentence("GPGGA," + time + ",4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,")
                + sentence("GPRMC," + time + ",A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W");
    }

    private static String sentence(String body) {
        int sum = body.chars().reduce(0, (a, b) -> a ^ b);
        return String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum);
    }
}
