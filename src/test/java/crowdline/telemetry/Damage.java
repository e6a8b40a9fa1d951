package crowdline.telemetry;

import java.io.ByteArrayOutputStream;
import java.util.Random;

/** What goes wrong with bytes on a radio or a disk. */
final class Damage {
    private Damage() {}

    /** Up to {@code most} places changed, dropped, doubled, cut out or filled with noise. */
    static byte[] some(byte[] bytes, Random random, int most) {
        byte[] now = bytes.clone();
        int places = 1 + random.nextInt(most);
        for (int i = 0; i < places && now.length > 0; i++) {
            now = one(now, random);
        }
        return now;
    }

    private static byte[] one(byte[] bytes, Random random) {
        int at = random.nextInt(bytes.length);
        int length = Math.min(1 + random.nextInt(40), bytes.length - at);
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + 40);
        out.write(bytes, 0, at);
        switch (random.nextInt(5)) {
            case 0 -> out.write(bytes[at] ^ (1 << random.nextInt(8)));
            case 1 -> {
                out.write(bytes, at, length);
                out.write(bytes, at, length);
            }
            case 2 -> {
                byte[] noise = new byte[length];
                random.nextBytes(noise);
                out.writeBytes(noise);
            }
            case 3 -> out.write(random.nextInt(256));
            default -> {}
        }
        int next = random.nextInt(5) == 0 ? at + length : at + 1;
        out.write(bytes, next, bytes.length - next);
        return out.toByteArray();
    }
}
