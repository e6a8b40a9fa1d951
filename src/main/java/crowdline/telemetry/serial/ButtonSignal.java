package crowdline.telemetry.serial;

import java.util.Locale;
import java.util.Optional;

/** What arrives when a button is worked. */
public sealed interface ButtonSignal {

    /**
     * A byte.
     *
     * @param value 0 to 255
     */
    record Sent(int value) implements ButtonSignal {
        public Sent {
            if (value < 0 || value > 255) {
                throw new IllegalArgumentException("value is " + value + "; a byte is from 0 to 255");
            }
        }

        @Override
        public String code() {
            return "byte " + value;
        }

        @Override
        public String words() {
            return String.format(Locale.ROOT, "byte 0x%02X", value);
        }
    }

    /**
     * A control line that turns on or off.
     *
     * @param on whether it turned on
     */
    record Turned(ControlLine line, boolean on) implements ButtonSignal {
        @Override
        public String code() {
            // Kept in the settings, whatever the constants come to be called.
            String name = switch (line) {
                case CTS -> "CTS";
                case DSR -> "DSR";
            };
            return name + (on ? " on" : " off");
        }

        @Override
        public String words() {
            return line + " line goes " + (on ? "on" : "off");
        }
    }

    /** To keep it by: {@code byte 65}, {@code CTS on}. */
    String code();

    /** To show it: "byte 0x41", "CTS line goes on". */
    String words();

    /** The signal of a code; empty for a text that is none. */
    static Optional<ButtonSignal> of(String code) {
        for (ControlLine line : ControlLine.values()) {
            for (boolean on : new boolean[] {true, false}) {
                Turned turned = new Turned(line, on);
                if (turned.code().equals(code)) {
                    return Optional.of(turned);
                }
            }
        }
        if (code.matches("byte \\d{1,3}") && Integer.parseInt(code.substring(5)) <= 255) {
            return Optional.of(new Sent(Integer.parseInt(code.substring(5))));
        }
        return Optional.empty();
    }
}
