package crowdline.measure;

import java.util.List;

/** What somebody reads numbers in, by what it is called. */
interface ReadUnit {
    /** How it may be written by somebody typing, in lower case; the first stands behind a number. */
    List<String> names();
}
