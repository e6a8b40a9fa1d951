package crowdline.app.command;

import crowdline.app.shell.Complaints;
import crowdline.flight.Flight;
import crowdline.measure.Measures;
import crowdline.sheet.ActPicture;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The file a picture of an act is written into; its ending says which kind. */
final class PictureFile {
    private PictureFile() {}

    /** Why no picture can be written there, or null if one can be tried. */
    static @Nullable String refusal(Path file, int acts) {
        if (acts != 1) {
            return "--picture draws one act; name it with --act";
        }
        return ending(file).equals("svg") || ending(file).equals("png")
                ? null
                : "--picture is " + file + "; its name must end in .svg or .png";
    }

    static void write(Path file, Show show, Act act, Flight flight, Measures measures) throws ShowFileException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            if (ending(file).equals("svg")) {
                ActPicture.writeSvg(show, act, flight, measures, out);
            } else {
                ActPicture.writePng(show, act, flight, measures, out);
            }
        } catch (IOException e) {
            throw Complaints.notWritten("the picture cannot be written", file);
        }
    }

    private static String ending(Path file) {
        String name = file.toString();
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
