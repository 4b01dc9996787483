# The sentences in which rules are written, and what each means to Drools.
#
# A rule says when it applies ([when]) and what follows ([then]). A line that starts with a dash narrows the report
# above it. Words in a sentence come from closed lists; names of findings, driving habits and cautions are those of the
# knowledge notes. Every condition is one pattern on one fact, so that each can be explained by itself.

# What the driver or the coach reports; what narrows a report stands on the same line or below it with a dash
[when]the driver reports {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|mechanical-fault|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle} or {another:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|mechanical-fault|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle}=Reported(is("symptom", "{symptom}", "{another}"))
#: either complaint will do
[when]the driver reports {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|mechanical-fault|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle}=Reported(is("symptom", "{symptom}"))
#: that complaint, whoever made it: driver, coach or log
[when]- at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs} or {other:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=is("phase", "{phase}", "{other}")
#: the report names either phase; one that names none does not pass
[when]- at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=is("phase", "{phase}")
#: the report names that phase; one that names none does not pass
[when]- not at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=isNot("phase", "{phase}")
#: the report names another phase; one that names none does not pass
[when]- anywhere but over kerbs=is("over-kerbs", "no")
#: any phase but kerbs, and also none
[when]- in {speed:slow|medium|fast} or {other:slow|medium|fast} corners=is("speed", "{speed}", "{other}")
#: the report names that speed of corner; one that names none does not pass
[when]- in {speed:slow|medium|fast} corners=is("speed", "{speed}")
#: the report names that speed of corner; one that names none does not pass
[when]- at the {axle:front|rear} tyres=is("where", "{axle}", "{axle}-left", "{axle}-right")
#: the axle, or one of its two wheels
[when]- at the {wheel:front-left|front-right|rear-left|rear-right} tyre=is("where", "{wheel}")
#: the report names that wheel
[when]- at least {severity:slight|clear|strong}=atLeast("severity", "{severity}")
#: slight is less than clear, clear less than strong; a report that says nothing is clear
[when]- less than strong=is("severity", "slight", "clear")
#: slight or clear
[when]- at a {corner:hairpin|chicane|sweeper|crest|dip|banking}=is("corner", "{corner}")
#: the report names that kind of corner (corner: hairpin)
[when]- not at a {corner:hairpin|chicane|sweeper|crest|dip|banking}=isNot("corner", "{corner}")
#: the report names another kind of corner; one that names none does not pass
[when]- at most {severity:slight|clear|strong}=atMost("severity", "{severity}")
#: slight is less than clear, clear less than strong; a report that says nothing is clear
[when]- on some laps=is("occurrence", "some-laps")
#: the report says occurrence: some-laps
[when]- in {turn:left|right} turns=is("turn", "{turn}")
#: the report names turns of that direction alone
[when]- in turns both ways=is("turn", "both")
#: the report says turn: both; one that says nothing does not pass
[when]- on every lap=is("occurrence", "every-lap")
#: also where the report does not say how often
[when]- not on every lap=isNot("occurrence", "every-lap")
#: some laps, or once
[when]- only once=is("occurrence", "once")
#: the report says occurrence: once
[when]- from the first laps=is("since", "first-laps")
#: the report says since: first-laps
[when]- over the whole run=is("since", "whole-run")
#: the report says since: whole-run
[when]- late in the run=is("since", "late-run")
#: the report says since: late-run
[when]- not late in the run=isNot("since", "late-run")
#: the report says first-laps or whole-run; one that says nothing does not pass
[when]- in turns of one direction only=is("turn", "left", "right")
#: the report says turn: left or turn: right
[when]the driver does not report {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|mechanical-fault|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle} at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=not Reported(is("symptom", "{symptom}"), is("phase", "{phase}"))
#: nobody reports it so; a report that leaves that open does not count against it
[when]the driver does not report {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|mechanical-fault|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle} in {speed:slow|medium|fast} corners=not Reported(is("symptom", "{symptom}"), is("speed", "{speed}"))
#: nobody reports it so; a report that leaves that open does not count against it
[when]the driver does not report {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|mechanical-fault|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle}=not Reported(is("symptom", "{symptom}"))
#: nobody reports it so; a report that leaves that open does not count against it

[when]a complaint is from the first laps=Reported(is("since", "first-laps"))
#: some report says since: first-laps
[when]no complaint goes beyond the first laps=not Reported(is("first-laps-only", "no"))
#: no report says anything else, and none leaves it open

# What the pyrometer and the gauge read, as bare numbers; of an axle the mean of its tyres that were read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is above {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:.C|.F}=Outing(above("{place}:tread in {unit}", {figure}))
#: mean of inner, middle and outer; nothing holds of a tyre that was not read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is below {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:.C|.F}=Outing(below("{place}:tread in {unit}", {figure}))
#: mean of inner, middle and outer; nothing holds of a tyre that was not read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is hotter at the inner edge by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K=Outing(above("{place}:inner over outer in K", {figure}))
#: inner less outer edge, a bare difference in kelvin
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is hotter at the outer edge by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K=Outing(above("{place}:outer over inner in K", {figure}))
#: outer less inner edge, a bare difference in kelvin
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is hotter in the middle by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K=Outing(above("{place}:middle over edges in K", {figure}))
#: middle less the mean of both edges, a bare difference in kelvin
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is cooler in the middle by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K=Outing(above("{place}:edges over middle in K", {figure}))
#: mean of both edges less the middle
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread differs by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K across its width=Outing(above("{place}:spread in K", {figure}))
#: hottest less coolest of inner, middle and outer
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread differs by less than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K across its width=Outing(below("{place}:spread in K", {figure}))
#: hottest less coolest of inner, middle and outer
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} tread is hotter than the {against:front-left|front-right|rear-left|rear-right|front|rear} tread by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} K=Outing(above("{place}:tread over {against}:in K", {figure}))
#: one wheel or axle against another, means of the tread
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} hot pressure is above {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(above("{place}:hot pressure in {unit}", {figure}))
#: gauge pressure straight after the run
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} hot pressure is below {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(below("{place}:hot pressure in {unit}", {figure}))
#: gauge pressure straight after the run
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} cold pressure is above {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(above("{place}:cold pressure in {unit}", {figure}))
#: gauge pressure before it; the car's setting where it was not read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} cold pressure is below {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(below("{place}:cold pressure in {unit}", {figure}))
#: gauge pressure before it; the car's setting where it was not read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} hot pressure is above its target by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(above("{place}:pressure over target in {unit}", {figure}))
#: the target is the hot-target of the car's file
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} hot pressure is below its target by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(above("{place}:pressure under target in {unit}", {figure}))
#: the target is the hot-target of the car's file
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} pressure grows by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(above("{place}:pressure growth in {unit}", {figure}))
#: hot less cold; the car's setting where the cold pressure was not read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} pressure grows by less than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(below("{place}:pressure growth in {unit}", {figure}))
#: hot less cold; the car's setting where the cold pressure was not read
[when]the {place:front-left|front-right|rear-left|rear-right|front|rear} hot pressure is above the {against:front-left|front-right|rear-left|rear-right|front|rear} hot pressure by more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:bar|kPa|psi}=Outing(above("{place}:hot pressure over {against}:in {unit}", {figure}))
#: one wheel or axle against another

# What the pyrometer and the gauge show; each is as certain as the reading is clear
[when]the {axle:front|rear} tyres are below their window=Reading(is("place", "{axle}"), is("shows", "below-window"))
#: mean of the tread against the window of the car's file; as certain as it is clear, beyond doubt from 10 K off
[when]the {axle:front|rear} tyres are inside their window=Reading(is("place", "{axle}"), is("shows", "inside-window"))
#: mean of the tread against the window of the car's file
[when]the {axle:front|rear} tyres are above their window=Reading(is("place", "{axle}"), is("shows", "above-window"))
#: mean of the tread against the window of the car's file; as certain as it is clear, beyond doubt from 10 K off
[when]the {axle:front|rear} tyres are hotter than those of the other axle=Reading(is("place", "{axle}"), is("shows", "hotter-axle"))
#: each against the middle of its own window where both are known
[when]the {axle:front|rear} tread is hotter at the inner edge=Reading(is("place", "{axle}"), is("shows", "inner-edge-hot"))
#: inner less outer edge; from 8 K on, beyond doubt from 18 K
[when]the {axle:front|rear} tread is hotter at the outer edge=Reading(is("place", "{axle}"), is("shows", "outer-edge-hot"))
#: outer less inner edge; from 0 K on, beyond doubt from 8 K
[when]the {wheel:front-left|front-right|rear-left|rear-right} tread alone is hotter at the inner edge=Reading(is("place", "{wheel}"), is("shows", "inner-edge-hot-alone"))
#: its partner is not; shown where the camber of that wheel is set by itself
[when]the {wheel:front-left|front-right|rear-left|rear-right} tread alone is hotter at the outer edge=Reading(is("place", "{wheel}"), is("shows", "outer-edge-hot-alone"))
#: its partner is not; shown where the camber of that wheel is set by itself
[when]the {axle:front|rear} tread is hotter in the middle=Reading(is("place", "{axle}"), is("shows", "middle-hot"))
#: against the mean of both edges; from 3 K on, beyond doubt from 8 K
[when]the {axle:front|rear} tread is cooler in the middle=Reading(is("place", "{axle}"), is("shows", "middle-cold"))
#: against the mean of both edges; from 3 K on, beyond doubt from 8 K
[when]the {axle:front|rear} tread is even across its width=Reading(is("place", "{axle}"), is("shows", "even-tread"))
#: neither an edge nor the middle stands out
[when]the {axle:front|rear} tyres are above their target pressure=Reading(is("place", "{axle}"), is("shows", "above-target"))
#: hot pressure against the hot-target of the car's file, both tyres
[when]the {axle:front|rear} tyres are at their target pressure=Reading(is("place", "{axle}"), is("shows", "at-target"))
#: hot pressure against the hot-target of the car's file, both tyres
[when]the {axle:front|rear} tyres are below their target pressure=Reading(is("place", "{axle}"), is("shows", "below-target"))
#: hot pressure against the hot-target of the car's file, both tyres
[when]the {axle:front|rear} tyres are set below their cold minimum=Reading(is("place", "{axle}"), is("shows", "below-minimum"))
#: cold pressure against the cold-minimum of the car's file
[when]the {axle:front|rear} pressures read no higher hot than cold=Reading(is("place", "{axle}"), is("shows", "no-growth"))
#: a leak, or a reading that is wrong
[when]the {wheel:front-left|front-right|rear-left|rear-right} tyre alone is above its target pressure=Reading(is("place", "{wheel}"), is("shows", "above-target-alone"))
#: its partner is not
[when]the {wheel:front-left|front-right|rear-left|rear-right} tyre alone is below its target pressure=Reading(is("place", "{wheel}"), is("shows", "below-target-alone"))
#: its partner is not
[when]the {axle:front|rear} tyres differ from side to side by more than the circuit explains=Reading(is("place", "{axle}"), is("shows", "sides-differ"))
#: left against right, with what a circuit that turns one way does taken off
[when]the {axle:front|rear} tread temperatures were not read=not Reading(is("place", "{axle}"), is("instrument", "pyrometer"))
#: no tyre of the axle has all three temperatures
[when]the {axle:front|rear} pressures were not read=not Reading(is("place", "{axle}"), is("instrument", "gauge"))
#: no hot pressure on the axle

# The car and the day
[when]the car is {drive:front|rear|all}-wheel drive=Setup(is("drive", "{drive}"))
#: the car's file says drive: rear, and so on
[when]the car is not {drive:front|rear|all}-wheel drive=Setup(isNot("drive", "{drive}"))
#: the car's file names another drive
[when]the {axle:front|rear} wheels are driven=Setup(is("drive", "{axle}", "all"))
#: front, rear or all-wheel drive that has them
[when]the {axle:front|rear} wheels are not driven=Setup(isNot("drive", "{axle}", "all"))
#: the other axle alone drives
[when]the car has an adjustable {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast}=Setup(is("adjustable {adjuster}", "yes"))
#: the car's file lists it
[when]the car has no adjustable {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast}=Setup(is("adjustable {adjuster}", "no"))
#: the car's file does not list it
[when]the {axle:front|rear} wheels are toed in by more than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(above("{axle}-toe", {number}))
#: toe of one wheel; positive is toe-in
[when]the {axle:front|rear} wheels are toed out by more than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(below("{axle}-toe", -{number}))
#: toe of one wheel; positive is toe-in
[when]the {axle:front|rear} wheels are toed in=Setup(above("{axle}-toe", 0))
#: toe of one wheel; positive is toe-in
[when]the {axle:front|rear} wheels are toed out=Setup(below("{axle}-toe", 0))
#: toe of one wheel; positive is toe-in
[when]the {axle:front|rear} camber is more negative than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(below("{axle}-camber", -{number}))
#: camber is negative when the top leans in: 3 means -3 deg
[when]the {axle:front|rear} camber is less negative than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(above("{axle}-camber", -{number}))
#: camber is negative when the top leans in: 3 means -3 deg
[when]the caster is more than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(above("caster", {number}))
#: positive when the steering axis leans back
[when]the caster is less than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(below("caster", {number}))
#: positive when the steering axis leans back
[when]the car is a {kind:hatch|saloon|coupe|roadster|tourer|single-seater|prototype|stock-car}=Setup(is("kind", "{kind}"))
#: the car's file says kind: hatch, and so on
[when]the car is not a {kind:hatch|saloon|coupe|roadster|tourer|single-seater|prototype|stock-car}=Setup(isNot("kind", "{kind}"))
#: the car's file names another kind; one that names none does not pass
[when]the car has {aid:anti-lock|traction-control}=Setup(is("aid {aid}", "yes"))
#: the car's file names it: aids: [anti-lock]; nothing holds of one that it does not name
[when]the car has wings=Setup(is("wings", "yes"))
#: a wing can be set, or the car's file gives downforce
[when]the car has no wings=Setup(is("wings", "no"))
#: no wing can be set, and the car's file gives no downforce
[when]the car weighs more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} kg=Setup(above("mass in kg", {figure}))
#: the mass of the car's file
[when]the car weighs less than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} kg=Setup(below("mass in kg", {figure}))
#: the mass of the car's file
[when]the left and right wheels lean alike=Setup(is("sides", "alike"))
#: no camber that is set wheel by wheel stands more than a step apart: else the car is set for turns of one direction
[when]the car is one of a simulator=Setup(is("simulator", "yes"))
#: the car's file or the case says simulator: yes
[when]the car is no car of a simulator=Setup(is("simulator", "no"))
#: the car's file or the case says simulator: no
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} stands above {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:deg|mm|bar|kPa|psi|N/mm|lb/in|%|Nm}=Setup(above("{adjuster}:in {unit}", {figure}))
#: where it stands now, with its sign: camber is negative when the top leans in; toe of one wheel, positive is toe-in
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} stands below {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:deg|mm|bar|kPa|psi|N/mm|lb/in|%|Nm}=Setup(below("{adjuster}:in {unit}", {figure}))
#: where it stands now, with its sign: camber is negative when the top leans in; toe of one wheel, positive is toe-in
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} stands above position {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+}=Setup(above("{adjuster}:in position", {figure}))
#: the number on the car's own scale, for what is set in clicks or holes
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} stands below position {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+}=Setup(below("{adjuster}:in position", {figure}))
#: the number on the car's own scale, for what is set in clicks or holes
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} can still go {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward}=Setup(atLeast("steps left of {adjuster}:towards {direction}", 1))
#: at least one of the car's own steps is left to the stop
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} is at its stop towards {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward}=Setup(below("steps left of {adjuster}:towards {direction}", 1))
#: less than one of the car's own steps is left to the stop
[when]the {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} has less than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} steps left towards {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward}=Setup(below("steps left of {adjuster}:towards {direction}", {figure}))
#: counted in the car's own steps up to the stop
[when]the surface is {surface:dry|damp|wet}=Day(is("surface", "{surface}"))
#: dry where the case does not say
[when]the surface is not {surface:dry|damp|wet}=Day(isNot("surface", "{surface}"))
#: dry where the case does not say
[when]the circuit turns both ways=Day(is("circuit", "both-ways"))
#: the case does not say turns: left or right
[when]the circuit turns one way=Day(is("circuit", "one-way"))
#: the case says turns: left or turns: right
[when]the circuit turns mostly {turn:left|right}=Day(is("turns", "{turn}"))
#: the case says turns: left or turns: right
[when]the track is above {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:.C|.F}=Day(above("track in {unit}", {figure}))
#: the track temperature of the case; nothing holds where it is not given
[when]the track is below {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:.C|.F}=Day(below("track in {unit}", {figure}))
#: the track temperature of the case; nothing holds where it is not given
[when]the air is above {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:.C|.F}=Day(above("air in {unit}", {figure}))
#: the air temperature of the case; nothing holds where it is not given
[when]the air is below {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:.C|.F}=Day(below("air in {unit}", {figure}))
#: the air temperature of the case; nothing holds where it is not given
[when]the track is not {warmth:cold|hot}=Day(isNot("track", "{warmth}"))
#: cold: below {cold-track}; hot: above {hot-track}; nothing holds where the track temperature is not given
[when]the track is cold=Day(is("track", "cold"))
#: cold: below {cold-track}; nothing holds where the track temperature is not given
[when]the track is hot=Day(is("track", "hot"))
#: hot: above {hot-track}; nothing holds where the track temperature is not given

# The run, its driver, and what was tried before
[when]the run may have been no longer than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} laps=not Outing(above("laps", {figure}))
#: also where nobody said how long it was
[when]the run was longer than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} laps=Outing(above("laps", {figure}))
#: laps of the stint, or those that were timed
[when]the run was shorter than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} laps=Outing(below("laps", {figure}))
#: laps of the stint, or those that were timed
[when]the run was long=Outing(is("length", "long"))
#: more than {long-run}
[when]the run was short=Outing(is("length", "short"))
#: {long-run} or fewer; nothing holds where nobody said how many
[when]the tyres are old=Outing(is("tyre age", "old"))
#: more than {old-tyres} before this run: stint: {tyre-laps: 30}
[when]the tyres are of the {compound:soft|medium|hard|intermediate|wet} compound=Outing(is("compound", "{compound}"))
#: the case says stint: {compound: soft}
[when]the tyres are not of the {compound:soft|medium|hard|intermediate|wet} compound=Outing(isNot("compound", "{compound}"))
#: the case names another compound; one that names none does not pass
[when]the tyres have done more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} laps=Outing(above("tyre laps", {figure}))
#: before this run: stint: {tyre-laps: 30}
[when]the tyres have done less than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} laps=Outing(below("tyre laps", {figure}))
#: before this run: stint: {tyre-laps: 30}
[when]there is more than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} kg of fuel on board=Outing(above("fuel in kg", {figure}))
#: at the start of the run: stint: {fuel: 40 kg}
[when]there is less than {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} kg of fuel on board=Outing(below("fuel in kg", {figure}))
#: at the start of the run: stint: {fuel: 40 kg}
[when]the driver is at {level:newcomer|club|experienced} level=Outing(is("level", "{level}"))
#: the case says driver: {level: newcomer}. newcomer: first days on a circuit; club: laps that are alike; experienced: drives round a fault
[when]the driver is not at {level:newcomer|club|experienced} level=Outing(isNot("level", "{level}"))
#: the case names another level; one that names none does not pass
[when]the driver wants {wish:more-rotation|more-calm|longer-tyre-life|more-straight-speed|lighter-steering}=Outing(is("wants {wish}", "yes"))
#: the case says driver: {wants: more-calm}
[when]the driver does not want {wish:more-rotation|more-calm|longer-tyre-life|more-straight-speed|lighter-steering}=Outing(is("wants {wish}", "no"))
#: holds also where nobody said what the driver wants
[when]the last change was {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward}=Outing(is("last change", "{adjuster}:{direction}"))
#: the last entry of tried, which the book of runs writes
[when]the last change made it {outcome:better|worse}=Outing(is("last outcome", "{outcome}"))
#: the outcome of the last entry of tried
[when]the last change made no difference=Outing(is("last outcome", "same"))
#: the outcome of the last entry of tried
[when]{adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} was tried and made it {outcome:better|worse}=Outing(is("outcome of {adjuster}:{direction}", "{outcome}"))
#: the last time that it was tried
[when]{adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} was tried and made no difference=Outing(is("outcome of {adjuster}:{direction}", "same"))
#: the last time that it was tried
[when]the answer to {question:[a-z][a-z0-9-]*} is {answer:[a-z0-9][a-z0-9-]*}=Outing(is("answer to {question}", "{answer}"))
#: a question of a pack, as the debrief asked it or the case answers it: answers: {kerb-height: tall}

# What other rules have found: likely from a certainty of 0.2, nearly certain from 0.6
[when]{finding:[a-z][a-z0-9-]*} is likely=Finding(is("finding", "{finding}"), atLeast("certainty", 0.2))
#: certainty of all evidence together from 0.2 on
[when]{finding:[a-z][a-z0-9-]*} is nearly certain=Finding(is("finding", "{finding}"), atLeast("certainty", 0.6))
#: certainty of all evidence together from 0.6 on
[when]{finding:[a-z][a-z0-9-]*} is not likely=not Finding(is("finding", "{finding}"), atLeast("certainty", 0.2))
#: certainty below 0.2, or nothing speaks for it

# What follows
[then]find {finding:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.find(drools, "{finding}", {certainty});
#: evidence for it; several add up as x + y - xy (EMYCIN)
[then]diagnose {finding:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.diagnose(drools, "{finding}", {certainty});
#: the same, where no rule need ask for it: it is told under what is going on, and nothing else follows
[then]speak against {finding:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.speakAgainst(drools, "{finding}", {certainty});
#: evidence against it
[then]propose {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.propose(drools, "{adjuster}", "{direction}", {certainty});
#: evidence for the change; how far it goes is computed for the car
[then]oppose {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.oppose(drools, "{adjuster}", "{direction}", {certainty});
#: evidence against the change
[then]withhold {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward}=Conclude.withhold(drools, "{adjuster}", "{direction}");
#: the change waits, and the advice says why
[then]withhold every balance change=Conclude.withholdBalance(drools);
#: everything waits but toe, camber and pressures
[then]withhold what loads the {axle:front|rear} tyres more=Conclude.withholdLoading(drools, "{axle}");
#: balance changes that heat those tyres wait, as the notes tell
[then]put {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} first=Conclude.first(drools, "{adjuster}", "{direction}");
#: of the changes that are advised it comes first, whatever its score; it is not advised for that alone
[then]propose {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} by {steps:[1-9][0-9]*} steps with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.proposeBy(drools, "{adjuster}", "{direction}", "{steps}", {certainty});
#: so many of the car's own steps, as far as its stop lets it
[then]propose {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} to {figure:-[0-9]+\.[0-9]+|[0-9]+\.[0-9]+|-[0-9]+|[0-9]+} {unit:deg|mm|bar|kPa|psi|N/mm|lb/in|%|Nm} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.proposeTo(drools, "{adjuster}", "{direction}", "{figure}:{unit}", {certainty});
#: the setting to try, as far as it lies that way; in the car's own steps
[then]propose {adjuster:front-toe|rear-toe|front-camber|rear-camber|front-left-camber|front-right-camber|rear-left-camber|rear-right-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} by {figure:[0-9]+\.[0-9]+|[0-9]+} {unit:deg|mm|bar|kPa|psi|N/mm|lb/in|%|Nm} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.proposeByFigure(drools, "{adjuster}", "{direction}", "{figure}:{unit}", {certainty});
#: so much, in the car's own steps as near as they come, as far as its stop lets it; the direction says which way
[then]withhold every {group:toe|camber|caster|pressures|bars|springs|dampers|ride-heights|wings|brake-bias|differential} change=Conclude.withholdGroup(drools, "{group}");
#: both ways and both ends; a caution or a finding is left free
[then]advise the driver {driving:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.advise(drools, "{driving}", {certainty});
#: a driving note; from certainty 0.2 it is told
[then]caution {caution:[a-z][a-z0-9-]*}=Conclude.caution(drools, "{caution}");
#: a caution note
