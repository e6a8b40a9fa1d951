package crowdline.telemetry.serial;

import com.fazecast.jSerialComm.SerialPort;

/** An open serial port. */
final class PortLink implements Link {
    private final SerialPort port;
    private int waitMs;
    private boolean closed;

    PortLink(SerialPort port) {
        this.port = port;
    }

    @Override
    public int read(byte[] buffer, int wait) {
        if (closed) {
            return -1;
        }
        if (wait != waitMs) {
            port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, wait, 0);
            waitMs = wait;
        }
        return port.readBytes(buffer, buffer.length);
    }

    @Override
    public boolean isOn(ControlLine line) {
        return !closed
                && switch (line) {
                    case CTS -> port.getCTS();
                    case DSR -> port.getDSR();
                };
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            port.closePort();
        }
    }
}
