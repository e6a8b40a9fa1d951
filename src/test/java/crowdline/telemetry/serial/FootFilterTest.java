package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Devices that send all the time, every byte learned for a command, and pedals of many kinds; seeded. */
class FootFilterTest {
    private static final Map<ButtonSignal, String> EVERY_BYTE = everyByte();
    private static final double READ_S = 0.01;

    private static Map<ButtonSignal, String> everyByte() {
        Map<ButtonSignal, String> all = new HashMap<>();
        for (int value = 0; value < 256; value++) {
            all.put(new ButtonSignal.Sent(value), "next");
        }
        return all;
    }

    /** A byte when it arrives. */
    private record Arrival(double atS, int value) {}

    /** A port on which these bytes arrive, read every hundredth of a second as the reader does. */
    private static final class Port {
        private final FootFilter filter = new FootFilter(0);
        private final Buttons buttons = new Buttons(EVERY_BYTE, Buttons.QUIET_S);
        private final ButtonLearner learner = new ButtonLearner("next", Map.of(), Buttons.QUIET_S);
        private final List<Double> commandsS = new ArrayList<>();
        private boolean told;
        private double nowS;

        Port run(List<Arrival> arrivals, double untilS) {
            int next = 0;
            for (; nowS <= untilS; nowS += READ_S) {
                while (next < arrivals.size() && arrivals.get(next).atS() <= nowS) {
                    filter.hear(arrivals.get(next).value(), nowS);
                    next++;
                }
                for (HeardSignal signal : filter.let(nowS)) {
                    buttons.hear(signal).ifPresent(command -> commandsS.add(signal.atS()));
                    learner.hear(signal);
                }
                told |= filter.isStream(nowS);
            }
            return this;
        }
    }

    /** Bytes one after another as a line of this speed carries them, handed over by the adapter every so often. */
    private static void send(List<Arrival> into, byte[] bytes, double fromS, int baud, double handedOverEveryS) {
        for (int i = 0; i < bytes.length; i++) {
            double atS = fromS + (i + 1) * 10.0 / baud;
            into.add(new Arrival(
                    handedOverEveryS > 0 ? Math.ceil(atS / handedOverEveryS) * handedOverEveryS : atS,
                    bytes[i] & 0xFF));
        }
    }

    private static byte[] log(String name) throws IOException {
        try (InputStream in = FootFilterTest.class.getResourceAsStream("/crowdline/telemetry/" + name)) {
            return Objects.requireNonNull(in).readAllBytes();
        }
    }

    /** A log cut into the bursts of a receiver: sentences from each first one of a second to the next, or 250 bytes. */
    private static List<byte[]> bursts(byte[] log, boolean binary) {
        List<byte[]> bursts = new ArrayList<>();
        for (int i = 0; binary && i < log.length; i += 250) {
            bursts.add(Arrays.copyOfRange(log, i, Math.min(i + 250, log.length)));
        }
        if (binary) {
            return bursts;
        }
        String first = "";
        StringBuilder burst = new StringBuilder();
        for (String line : new String(log, StandardCharsets.ISO_8859_1).split("(?<=\n)", -1)) {
            String kind = line.split(",", 2)[0];
            if (first.isEmpty() && kind.startsWith("$")) {
                first = kind;
            } else if (kind.equals(first)) {
                bursts.add(burst.toString().getBytes(StandardCharsets.ISO_8859_1));
                burst.setLength(0);
            }
            burst.append(line);
        }
        return bursts;
    }

    private static List<Arrival> receiver(List<byte[]> bursts, double fromS, double hz, int baud, double handedOverS) {
        List<Arrival> all = new ArrayList<>();
        double freeS = fromS;
        for (int i = 0; freeS < fromS + 30; i++) {
            byte[] burst = bursts.get(i % bursts.size());
            double atS = Math.max(fromS + i / hz, freeS);
            send(all, burst, atS, baud, handedOverS);
            freeS = atS + burst.length * 10.0 / baud;
        }
        return all;
    }

    @Test
    void noSentenceOfARecordedReceiverIsAPressAtAnyRateOrSpeed() throws IOException {
        for (String name : List.of("ublox-neo-m9n-nmea.log", "sirfstarv.log")) {
            List<byte[]> bursts = bursts(log(name), name.startsWith("sirf"));
            assertThat(bursts.size()).as(name).isGreaterThan(1);
            for (double hz : new double[] {1, 5, 10}) {
                for (int baud : new int[] {4800, 9600, 38_400, 115_200}) {
                    for (double fromS : new double[] {0, 0.7, 30.3}) {
                        for (double handedOverS : new double[] {0, 0.004, 0.016}) {
                            Port port = new Port().run(receiver(bursts, fromS, hz, baud, handedOverS), fromS + 35);
                            assertThat(port.commandsS)
                                    .as("%s at %s Hz and %s baud from %s s", name, hz, baud, fromS)
                                    .isEmpty();
                            assertThat(port.learner.learned()).isEmpty();
                            assertThat(port.told).isTrue();
                        }
                    }
                }
            }
        }
    }

    @Test
    void noBinaryMessageAndNoNoiseIsAPress() {
        Random random = new Random(14);
        for (int run = 0; run < 200; run++) {
            List<Arrival> all = new ArrayList<>();
            double fromS = run % 2 == 0 ? 0.3 : 20 + random.nextDouble();
            double hz = 1 + random.nextInt(10);
            int baud = List.of(4800, 9600, 57_600, 115_200).get(random.nextInt(4));
            boolean framed = random.nextBoolean();
            for (int i = 0; i < 20 * hz; i++) {
                byte[] message = new byte[28 + random.nextInt(80)];
                random.nextBytes(message);
                if (framed) {
                    message[0] = (byte) 0xB5;
                    message[1] = 0x62;
                    message[2] = 1;
                    message[3] = 7;
                    Arrays.fill(message, 8, 14, (byte) 0);
                }
                send(all, message, fromS + i / hz, baud, 0);
            }
            all.sort(Comparator.comparingDouble(Arrival::atS));
            Port port = new Port().run(all, fromS + 21);
            assertThat(port.commandsS).as("run %s, seed 14", run).isEmpty();
            assertThat(port.told).as("run %s, seed 14", run).isTrue();
        }
    }

    @Test
    void whatDribblesInIsFoundOutAndTold() {
        byte[] sentence = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n"
                .getBytes(StandardCharsets.US_ASCII);
        List<Arrival> all = new ArrayList<>();
        for (int i = 0; i < 600; i++) {
            all.add(new Arrival(0.5 + i * 0.05, sentence[i % sentence.length]));
        }
        Port port = new Port().run(all, 31);
        assertThat(port.commandsS).isEmpty();
        assertThat(port.told).isTrue();
    }

    @Tag("slow")
    @Test
    void noPressOfAnyKindOfPedalIsLostOrCountedTwice() {
        Random random = new Random(41);
        List<byte[]> messages = List.of(
                new byte[] {'1'},
                new byte[] {0},
                new byte[] {(byte) 0xFF},
                "A\r\n".getBytes(StandardCharsets.US_ASCII),
                "BTN1\r\n".getBytes(StandardCharsets.US_ASCII),
                "BUTTON 1 DOWN\r\n".getBytes(StandardCharsets.US_ASCII),
                new byte[] {(byte) 0x90, 60, 127});
        for (int run = 0; run < 1000; run++) {
            byte[] message = messages.get(random.nextInt(messages.size()));
            int bounces = message.length > 6 ? 0 : random.nextInt(4);
            double repeatHz = random.nextBoolean() ? 0 : 10 + random.nextInt(21);
            int baud = List.of(message.length > 6 ? 9600 : 1200, 9600, 115_200).get(random.nextInt(3));
            List<Arrival> all = new ArrayList<>();
            List<Double> pressesS = new ArrayList<>();
            double atS = FootFilter.LISTEN_FIRST_S + random.nextDouble();
            for (int press = 0; press < 40; press++) {
                pressesS.add(atS);
                double heldS = repeatHz == 0 ? 0.05 : random.nextDouble() * 3;
                double freeS = atS;
                for (int i = 0; i <= bounces; i++) {
                    freeS = Math.max(freeS, atS + i * random.nextDouble() * 0.008);
                    send(all, message, freeS, baud, 0);
                    freeS += message.length * 10.0 / baud;
                }
                double periodS = Math.max(1 / repeatHz, message.length * 10.0 / baud);
                for (double s = periodS; repeatHz > 0 && s < heldS; s += periodS) {
                    send(all, message, Math.max(atS + s, freeS), baud, 0);
                    freeS = Math.max(atS + s, freeS) + message.length * 10.0 / baud;
                }
                // As quick as a foot is, or slow.
                atS = Math.max(freeS, atS + (repeatHz == 0 ? 0 : heldS))
                        + (random.nextBoolean() ? 0.18 : 0.3 + 5 * random.nextDouble());
            }
            ButtonSignal first = new ButtonSignal.Sent(message[0] & 0xFF);
            List<Double> heardS = commands(all, atS + 1, first);
            assertThat(heardS).as("run %s, seed 41", run).hasSize(pressesS.size());
            for (int i = 0; i < heardS.size(); i++) {
                assertThat(heardS.get(i) - pressesS.get(i)).as("run %s", run).isBetween(0.0, 0.03);
            }
        }
    }

    @Test
    void greetingOfABoardIsNoPressAndNoStream() {
        List<Arrival> all = new ArrayList<>();
        send(all, "Pedal v1.2 ready, 3 buttons\r\n".getBytes(StandardCharsets.US_ASCII), 1.6, 9600, 0);
        all.add(new Arrival(4, '1'));
        Port port = new Port().run(all, 6);
        assertThat(port.told).isFalse();
        assertThat(port.commandsS).hasSize(1);
    }

    private static List<Double> commands(List<Arrival> arrivals, double untilS, ButtonSignal learned) {
        FootFilter filter = new FootFilter(0);
        Buttons buttons = new Buttons(Map.of(learned, "next"), Buttons.QUIET_S);
        List<Double> commandsS = new ArrayList<>();
        int next = 0;
        for (double nowS = 0; nowS <= untilS; nowS += READ_S) {
            while (next < arrivals.size() && arrivals.get(next).atS() <= nowS) {
                filter.hear(arrivals.get(next).value(), nowS);
                next++;
            }
            for (HeardSignal signal : filter.let(nowS)) {
                buttons.hear(signal).ifPresent(command -> commandsS.add(signal.atS()));
            }
        }
        return commandsS;
    }
}
