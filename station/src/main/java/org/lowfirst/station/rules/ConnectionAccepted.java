package org.lowfirst.station.rules;

import java.util.List;
import java.util.Map;

/** The outlet must be one of these oxygen connections; one that has to be adapted belongs to another gas. */
public record ConnectionAccepted(RuleHeading heading, List<String> connections) implements FillRule {

    public ConnectionAccepted {
        connections = List.copyOf(connections);
    }

    static ConnectionAccepted of(RuleHeading heading, RuleSettings settings) {
        return new ConnectionAccepted(heading, settings.names("connections"));
    }

    @Override
    public RuleKind kind() {
        return RuleKind.CONNECTION;
    }

    @Override
    public Map<String, String> settings() {
        return RuleWords.none()
                .with("connections", String.join(", ", connections))
                .asMap();
    }

    @Override
    public List<Finding> judge(CylinderFacts facts, Setting setting) {
        Finding unknown = Finding.warn(heading, Advice.ENTER_CONNECTION, Measure.NOTHING, Measure.NOTHING);
        return List.of(AcceptedNames.judge(
                heading, facts.service().connection(), connections, unknown, Advice.DO_NOT_ADAPT_CONNECTION));
    }
}
