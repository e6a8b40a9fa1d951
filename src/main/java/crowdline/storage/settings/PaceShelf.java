package crowdline.storage.settings;

import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.OwnerOnly;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The paces of the speakers of this machine, a file each in a folder of their own. A speaker's name is text and never a
 * path: the file is named after its letters and digits and a digest of all of it.
 */
public final class PaceShelf {
    /** Longest name of a speaker, in characters; longer than any name on a programme. */
    public static final int LONGEST_NAME = 60;

    private static final int LONGEST_STEM = 24;
    private static final String SUFFIX = ".json";

    private final Path folder;

    /** @param folder where the paces are kept; it need not exist yet */
    public PaceShelf(Path folder) {
        this.folder = folder;
    }

    /**
     * What is on the shelf.
     *
     * @param paces in the order of their speakers' names
     * @param said a sentence for every file that could not be used
     */
    public record Reading(List<Pace> paces, List<String> said) {
        public Reading {
            paces = List.copyOf(paces);
            said = List.copyOf(said);
        }

        /** These, with one that the console goes by. */
        public Paces with(Pace own) {
            return new Paces(own, paces);
        }

        /** The pace of a speaker. */
        public Optional<Pace> of(String speaker) {
            return paces.stream().filter(p -> p.name().equals(speaker)).findFirst();
        }
    }

    /**
     * A name as it is kept: without space around it, letters in their composed form.
     *
     * @throws IllegalArgumentException if it can be nobody's name, with a sentence for the user
     */
    public static String name(String given) {
        String name = Normalizer.normalize(given, Normalizer.Form.NFC).strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("the speaker has no name; type one");
        }
        if (name.codePointCount(0, name.length()) > LONGEST_NAME) {
            throw new IllegalArgumentException(
                    "the speaker's name is longer than " + LONGEST_NAME + " characters; type a shorter one");
        }
        if (name.codePoints().anyMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE)) {
            throw new IllegalArgumentException(
                    "the speaker's name has characters in it that cannot be shown; type it again");
        }
        return name;
    }

    /**
     * The pace of a speaker, and those of everybody else; the default's for nobody, and for one whose pace cannot be read.
     */
    public Paces pacesOf(@Nullable String speaker) {
        Reading reading = read();
        return reading.with(speaker == null ? Pace.DEFAULT : reading.of(speaker).orElse(Pace.DEFAULT));
    }

    /** Every pace that can be read. */
    public Reading read() {
        List<String> said = new ArrayList<>();
        TreeMap<String, Pace> paces = new TreeMap<>(String.CASE_INSENSITIVE_ORDER.thenComparing(n -> n));
        for (Path file : files(said)) {
            try {
                Pace pace = PaceFile.read(file);
                // Of two files of one speaker the one saved here counts.
                if (file.equals(file(pace.name()))) {
                    paces.put(pace.name(), pace);
                } else {
                    paces.putIfAbsent(pace.name(), pace);
                }
            } catch (ShowFileException e) {
                said.add(String.valueOf(e.getMessage()));
            }
        }
        return new Reading(List.copyOf(paces.values()), said);
    }

    /**
     * Keeps a pace, in place of the speaker's earlier one.
     *
     * @throws ShowFileException if it cannot be saved, with one sentence for the user
     */
    public void write(Pace pace) throws ShowFileException {
        try {
            OwnerOnly.folder(folder);
        } catch (IOException e) {
            throw ShowFileException.noFolder("the folder of paces", folder, e);
        }
        PaceFile.write(file(pace.name()), pace, AtomicFile.ownerOnly());
    }

    /** Where a speaker's pace lies: always directly in the folder. */
    Path file(String speaker) {
        String letters = Normalizer.normalize(speaker, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String stem = letters.isEmpty() ? "speaker" : letters.substring(0, Math.min(LONGEST_STEM, letters.length()));
        return folder.resolve(stem + "-" + Sha256.ofName(Normalizer.normalize(speaker, Normalizer.Form.NFC)) + SUFFIX);
    }

    private List<Path> files(List<String> said) {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return files;
        }
        OwnerOnly.tighten(folder);
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + SUFFIX)) {
            all.forEach(files::add);
        } catch (IOException e) {
            said.add("the folder of paces " + folder + " cannot be read; check that you may read it");
        }
        Collections.sort(files);
        return files;
    }
}
