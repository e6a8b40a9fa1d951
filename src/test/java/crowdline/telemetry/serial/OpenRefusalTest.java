package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Codes by {@code errno(3)} of Linux and by the system error codes of Windows. */
class OpenRefusalTest {
    @Test
    void missingPermissionOnLinuxNamesTheGroupOfThePort() {
        assertThat(OpenRefusal.sentence("/dev/ttyUSB0", 13, "Linux", "dialout"))
                .isEqualTo("Linux does not let you use /dev/ttyUSB0 (permission denied, error 13); run"
                        + " \"sudo usermod -aG dialout $USER\", then log out and in again");
        assertThat(OpenRefusal.sentence("/dev/ttyUSB0", 13, "Linux", "uucp")).contains("-aG uucp $USER");
        assertThat(OpenRefusal.sentence("/dev/ttyUSB0", 13, "Linux", null)).contains("-aG dialout $USER");
    }

    @Test
    void portInUseIsToldOnEachSystem() {
        assertThat(OpenRefusal.sentence("/dev/ttyUSB0", 16, "Linux", "dialout"))
                .isEqualTo("Another program uses /dev/ttyUSB0 (error 16); close that program");
        assertThat(OpenRefusal.sentence("COM3", 5, "Windows 11", null))
                .isEqualTo("Another program uses COM3 (error 5); close that program");
    }

    @Test
    void portThatIsNotThereAsksForItsPlug() {
        assertThat(OpenRefusal.sentence("COM3", 2, "Windows 11", null))
                .isEqualTo("COM3 is not there (error 2); plug it in");
    }

    @Test
    void unknownCodeIsPassedOn() {
        assertThat(OpenRefusal.sentence("/dev/ttyS0", 5, "Linux", "dialout"))
                .isEqualTo("The system would not open /dev/ttyS0 (error 5); unplug it and plug it in again");
    }

    /** ENOTTY is 25 on Linux and on macOS: what a pipe or another device answers. */
    @Test
    void whatIsNoPortIsCalledThat() {
        assertThat(OpenRefusal.sentence("/run/feed", 25, "Linux", "root"))
                .isEqualTo("/run/feed is not a serial port (error 25); choose a port, or a flight log");
    }
}
