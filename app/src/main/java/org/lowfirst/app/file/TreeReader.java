package org.lowfirst.app.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.file.Tree.Listing;
import org.lowfirst.app.file.Tree.Mapping;
import org.lowfirst.app.file.Tree.Pair;
import org.lowfirst.app.file.Tree.Scalar;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/**
 * Builds the {@link Tree} of one YAML document from the parser's events. Depth is limited, so that no file can exhaust the
 * stack; an alias stands for the part its anchor names.
 */
public final class TreeReader {

    /** A plan file is three deep: the file, its lists, their entries. */
    private static final int DEEPEST = 12;

    private final Iterator<Event> events;
    private final Map<String, Tree> anchored = new HashMap<>();

    private TreeReader(Iterator<Event> events) {
        this.events = events;
    }

    /** The document of the text, or empty when there is none or it cannot be read; then a problem says why. */
    public static Optional<Tree> read(SourceText source, Problems problems) {
        try {
            LoadSettings settings = LoadSettings.builder()
                    .setCodePointLimit(Math.max(1, source.text().length()))
                    .build();
            Iterator<Event> events =
                    new Parse(settings).parseString(source.text()).iterator();
            return new TreeReader(events).document(problems);
        } catch (MarkedYamlEngineException unreadable) {
            Mark mark =
                    unreadable.getProblemMark().or(unreadable::getContextMark).orElseThrow();
            problems.error(placeOf(mark), YamlComplaint.of(unreadable));
        } catch (ReaderException odd) {
            problems.error(placeOf(source.text(), odd.getPosition()), YamlComplaint.of(odd));
        } catch (TooDeep deep) {
            problems.error(
                    deep.place,
                    "The file is nested more than " + DEEPEST + " levels deep; a plan file needs three. "
                            + "Maybe another file was meant.");
        }
        return Optional.empty();
    }

    private Optional<Tree> document(Problems problems) {
        Optional<Tree> first = Optional.empty();
        while (events.hasNext()) {
            Event event = events.next();
            if (!(event instanceof NodeEvent)) {
                continue;
            }
            if (first.isPresent()) {
                problems.error(placeOf(event), "A second document starts here after \"---\"; keep one plan to a file.");
                return Optional.empty();
            }
            first = Optional.of(tree(event, 0));
        }
        return first;
    }

    private Tree tree(Event event, int depth) {
        if (depth > DEEPEST) {
            throw new TooDeep(placeOf(event));
        }
        if (event instanceof AliasEvent alias) {
            return alias(alias);
        }
        Tree tree;
        if (event instanceof ScalarEvent scalar) {
            tree = new Scalar(scalar.getValue().strip(), scalar.isPlain(), placeOf(event));
        } else if (event instanceof MappingStartEvent mapping) {
            tree = mapping(mapping, depth);
        } else {
            tree = listing(event, depth);
        }
        ((NodeEvent) event).getAnchor().ifPresent(anchor -> anchored.put(anchor.getValue(), tree));
        return tree;
    }

    private Tree alias(AliasEvent alias) {
        String name = alias.getAlias().getValue();
        Tree named = anchored.get(name);
        if (named == null) {
            return new Scalar("*" + name, true, placeOf(alias));
        }
        return named;
    }

    private Tree mapping(MappingStartEvent start, int depth) {
        List<Pair> pairs = new ArrayList<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            Tree key = tree(event, depth + 1);
            pairs.add(new Pair(key, tree(events.next(), depth + 1)));
            event = events.next();
        }
        return new Mapping(pairs, start.isFlow(), placeOf(start));
    }

    private Tree listing(Event start, int depth) {
        List<Tree> items = new ArrayList<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(tree(event, depth + 1));
            event = events.next();
        }
        return new Listing(items, placeOf(start));
    }

    private static Place placeOf(Event event) {
        Mark start = event.getStartMark().orElseThrow();
        Mark end = event.getEndMark().orElse(start);
        boolean whole = !(event instanceof CollectionStartEvent) && end.getLine() == start.getLine();
        int width = whole ? Math.max(1, end.getColumn() - start.getColumn()) : 1;
        return new Place(start.getLine() + 1, start.getColumn() + 1, width);
    }

    private static Place placeOf(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1, 1);
    }

    private static Place placeOf(String text, int codePoints) {
        int end = text.offsetByCodePoints(0, Math.min(codePoints, text.codePointCount(0, text.length())));
        return FileText.endOf(text.substring(0, end));
    }

    /** Ends the reading of a file that nests too deep; caught where reading started. */
    private static final class TooDeep extends IllegalStateException {

        private static final long serialVersionUID = 1L;
        private final transient Place place;

        TooDeep(Place place) {
            this.place = place;
        }
    }
}
