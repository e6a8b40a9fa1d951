package crowdline.telemetry.serial;

/** Lines of a serial port that a switch can work. */
public enum ControlLine {
    /** Clear to send: a switch between it and RTS, which is on while the port is open. */
    CTS,
    /** Data set ready: a switch between it and DTR, which is on while the port is open. */
    DSR
}
