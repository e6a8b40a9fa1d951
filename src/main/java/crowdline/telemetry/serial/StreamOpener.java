package crowdline.telemetry.serial;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Bytes from a stream, such as standard input or a file. It is read once; at its end there is nothing to try again. */
public final class StreamOpener implements LinkOpener {
    private final String name;
    private final InputStream in;
    private boolean opened;

    /**
     * Takes a stream, and closes it at the end.
     *
     * @param name for the screen
     */
    public StreamOpener(String name, InputStream in) {
        this.name = name;
        this.in = in;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Integer> speedsBaud() {
        return List.of();
    }

    @Override
    public Link open(int baud) throws LinkException {
        if (opened) {
            throw new LinkException(name + " has come to its end", true);
        }
        opened = true;
        return new StreamLink(in);
    }

    /** Waits as long as the stream does: a stream cannot be told how long. */
    private static final class StreamLink implements Link {
        private final InputStream in;
        private boolean closed;

        StreamLink(InputStream in) {
            this.in = in;
        }

        @Override
        public int read(byte[] buffer, int waitMs) {
            try {
                return closed ? -1 : in.read(buffer);
            } catch (IOException e) {
                return -1;
            }
        }

        @Override
        public boolean isOn(ControlLine line) {
            return false;
        }

        @Override
        public void close() {
            if (!closed) {
                closed = true;
                try {
                    in.close();
                } catch (IOException e) {
                    // Nothing more was wanted from it.
                }
            }
        }
    }
}
