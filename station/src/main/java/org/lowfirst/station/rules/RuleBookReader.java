package org.lowfirst.station.rules;

import java.io.Serial;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads one rule file, strictly: the first line that does not say what it must say ends the reading. */
final class RuleBookReader {

    private final String file;
    private final List<String> lines;
    private final List<FillRule> rules = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();

    RuleBookReader(String file, String text) {
        this.file = file;
        this.lines = text.lines().toList();
    }

    /** The lines of one block while it is being read. */
    private record Block(String id, int line, Map<String, String> values, Map<String, Integer> places) {

        static Block at(String id, int line) {
            return new Block(id, line, new LinkedHashMap<>(), new LinkedHashMap<>());
        }
    }

    RuleBookReading read() {
        try {
            return readBlocks();
        } catch (Stop stop) {
            return stop.malformed();
        }
    }

    private RuleBookReading readBlocks() throws Stop {
        Block head = Block.at("", 1);
        Block block = head;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            int number = i + 1;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (line.startsWith("[")) {
                if (!block.id().isEmpty()) {
                    rules.add(rule(block));
                }
                block = Block.at(idIn(line, number), number);
            } else {
                take(line, number, block);
            }
        }
        if (!block.id().isEmpty()) {
            rules.add(rule(block));
        }
        return book(head);
    }

    private RuleBookReading book(Block head) throws Stop {
        RuleSettings settings = new RuleSettings(head.values());
        try {
            String id = settings.text(RuleBookText.BOOK);
            String title = settings.text(RuleBookText.TITLE);
            refuseLeftOver(head, settings);
            return new RuleBookReading.Read(new RuleBook(id, title, rules));
        } catch (MalformedSetting wrong) {
            throw stopAt(head, wrong);
        } catch (IllegalArgumentException wrong) {
            throw new Stop(malformed(Math.max(1, lines.size()), 1, String.valueOf(wrong.getMessage())));
        }
    }

    private String idIn(String line, int number) throws Stop {
        if (!line.endsWith("]") || line.length() < 3) {
            throw new Stop(
                    malformed(number, line.length(), "A rule opens with its id in brackets, e.g. [us.life.3ht]."));
        }
        String id = line.substring(1, line.length() - 1);
        if (!ids.add(id)) {
            throw new Stop(malformed(number, 2, "The id \"" + id + "\" is used twice."));
        }
        return id;
    }

    private void take(String line, int number, Block block) throws Stop {
        int equals = line.indexOf('=');
        if (equals < 1) {
            throw new Stop(malformed(number, 1, "This is not \"key = value\"."));
        }
        String key = line.substring(0, equals).strip();
        String value = line.substring(equals + 1).strip();
        if (value.isEmpty()) {
            throw new Stop(malformed(number, line.length(), "There is no value for \"" + key + "\"."));
        }
        if (block.values().put(key, value) != null) {
            throw new Stop(malformed(number, 1, "\"" + key + "\" is set twice."));
        }
        block.places().put(key, number);
    }

    private FillRule rule(Block block) throws Stop {
        RuleSettings settings = new RuleSettings(block.values());
        try {
            RuleKind kind = kind(settings.text(RuleBookText.KIND));
            RuleHeading heading = new RuleHeading(
                    block.id(),
                    settings.text(RuleBookText.COUNTRY),
                    settings.text(RuleBookText.SOURCE),
                    status(settings.text(RuleBookText.STATUS)),
                    new InForce(settings.day(RuleBookText.FROM), settings.findDay(RuleBookText.UNTIL)),
                    override(settings.text(RuleBookText.OVERRIDE)));
            FillRule rule = kind.make(heading, settings);
            refuseLeftOver(block, settings);
            return rule;
        } catch (MalformedSetting wrong) {
            throw stopAt(block, wrong);
        } catch (IllegalArgumentException wrong) {
            throw new Stop(malformed(block.line(), 1, String.valueOf(wrong.getMessage())));
        }
    }

    private static RuleKind kind(String word) {
        for (RuleKind kind : RuleKind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        throw new MalformedSetting(RuleBookText.KIND, "\"" + word + "\" is not a kind of rule.");
    }

    private static RuleStatus status(String word) {
        for (RuleStatus status : RuleStatus.values()) {
            if (status.word().equals(word)) {
                return status;
            }
        }
        throw new MalformedSetting(
                RuleBookText.STATUS,
                "\"" + word + "\" is not one of: read; read, quoted; from memory; common practice; bench.");
    }

    private static OverridePolicy override(String word) {
        for (OverridePolicy policy : OverridePolicy.values()) {
            if (policy.word().equals(word)) {
                return policy;
            }
        }
        throw new MalformedSetting(RuleBookText.OVERRIDE, "\"" + word + "\" is not one of: never; second person.");
    }

    private static void refuseLeftOver(Block block, RuleSettings settings) {
        for (String key : settings.leftOver()) {
            throw new MalformedSetting(
                    key, "\"" + key + "\" is not a setting of " + (block.id().isEmpty() ? "a book." : "this kind."));
        }
    }

    private Stop stopAt(Block block, MalformedSetting wrong) {
        @Nullable Integer line = block.places().get(wrong.key());
        if (line == null) {
            return new Stop(malformed(block.line(), 1, String.valueOf(wrong.getMessage())));
        }
        String text = lines.get(line - 1);
        int column = text.indexOf('=') + 1;
        while (column < text.length() && Character.isWhitespace(text.charAt(column))) {
            column++;
        }
        return new Stop(malformed(line, column + 1, String.valueOf(wrong.getMessage())));
    }

    private RuleBookReading.Malformed malformed(int line, int column, String problem) {
        String text = line <= lines.size() ? lines.get(line - 1) : "";
        return new RuleBookReading.Malformed(file, line, column, problem, text);
    }

    /** Ends the reading. */
    private static final class Stop extends Exception {

        @Serial
        private static final long serialVersionUID = 1L;

        private final transient RuleBookReading.Malformed malformed;

        Stop(RuleBookReading.Malformed malformed) {
            super(malformed.message());
            this.malformed = malformed;
        }

        RuleBookReading.Malformed malformed() {
            return malformed;
        }
    }
}
