package crowdline.telemetry.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A process that lists its ports and says which native parts of the serial library it has loaded, from Linux's list. */
final class SerialChild {
    private SerialChild() {}

    public static void main(String[] args) throws IOException {
        String said = "ports";
        try {
            new SerialPorts(Path.of(args[0])).list();
        } catch (LinkException e) {
            said = String.valueOf(e.getMessage());
        }
        System.out.println(said);
        System.out.println(System.getProperty("java.io.tmpdir"));
        Files.readAllLines(Path.of("/proc/self/maps")).stream()
                .filter(line -> line.contains("jSerialComm"))
                .filter(line -> !line.contains(".jar"))
                .map(line -> line.substring(line.indexOf('/')))
                .distinct()
                .forEach(System.out::println);
    }
}
