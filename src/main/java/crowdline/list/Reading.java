package crowdline.list;

import crowdline.list.draft.Draft;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a stretch of the text. */
interface Reading {
    List<Draft> read(int from, int to);

    /** Reads each part of a stretch by itself. */
    default List<Draft> readParts(String said, int from, int to, Pattern parting) {
        List<Draft> found = new ArrayList<>();
        Matcher mark = parting.matcher(said).region(from, Math.max(from, to));
        int begin = from;
        while (begin < to) {
            boolean goesOn = mark.find();
            int end = goesOn ? mark.start() : to;
            if (!said.substring(begin, end).isBlank()) {
                found.addAll(read(begin, end));
            }
            begin = goesOn ? mark.end() : to;
        }
        return found;
    }
}
