# The sentences in which rules are written, and what each means to Drools.
#
# A rule says when it applies ([when]) and what follows ([then]). A line that starts with a dash narrows the report
# above it. Words in a sentence come from closed lists; names of findings, driving habits and cautions are those of the
# knowledge notes. Every condition is one pattern on one fact, so that each can be explained by itself.

# What the driver or the coach reports
[when]the driver reports {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle}=Reported(is("symptom", "{symptom}"))
[when]- at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs} or {other:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=is("phase", "{phase}", "{other}")
[when]- at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=is("phase", "{phase}")
[when]- not at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=isNot("phase", "{phase}")
[when]- anywhere but over kerbs=is("over-kerbs", "no")
[when]- in {speed:slow|medium|fast} or {other:slow|medium|fast} corners=is("speed", "{speed}", "{other}")
[when]- in {speed:slow|medium|fast} corners=is("speed", "{speed}")
[when]- at the {axle:front|rear} tyres=is("where", "{axle}", "{axle}-left", "{axle}-right")
[when]- at the {wheel:front-left|front-right|rear-left|rear-right} tyre=is("where", "{wheel}")
[when]- at least {severity:slight|clear|strong}=atLeast("severity", "{severity}")
[when]- less than strong=is("severity", "slight", "clear")
[when]- on every lap=is("occurrence", "every-lap")
[when]- not on every lap=isNot("occurrence", "every-lap")
[when]- only once=is("occurrence", "once")
[when]- from the first laps=is("since", "first-laps")
[when]- over the whole run=is("since", "whole-run")
[when]- late in the run=is("since", "late-run")
[when]- not late in the run=isNot("since", "late-run")
[when]- in turns of one direction only=is("turn", "left", "right")
[when]the driver does not report {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle} at {phase:braking|entry|lift-off|mid-corner|exit|straight|kerbs}=not Reported(is("symptom", "{symptom}"), is("phase", "{phase}"))
[when]the driver does not report {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle} in {speed:slow|medium|fast} corners=not Reported(is("symptom", "{symptom}"), is("speed", "{speed}"))
[when]the driver does not report {symptom:understeer|oversteer|snap-oversteer|wheelspin|front-locking|rear-locking|unstable-braking|slow-turn-in|nervous-turn-in|wandering|pulling|heavy-steering|light-steering|slow-warm-up|overheating|graining|bottoming|kerb-instability|hot-inner-edge|hot-outer-edge|hot-middle|cold-middle}=not Reported(is("symptom", "{symptom}"))

[when]a complaint is from the first laps=Reported(is("since", "first-laps"))
[when]no complaint goes beyond the first laps=not Reported(is("first-laps-only", "no"))

# What the pyrometer and the gauge show; each is as certain as the reading is clear
[when]the {axle:front|rear} tyres are below their window=Reading(is("place", "{axle}"), is("shows", "below-window"))
[when]the {axle:front|rear} tyres are inside their window=Reading(is("place", "{axle}"), is("shows", "inside-window"))
[when]the {axle:front|rear} tyres are above their window=Reading(is("place", "{axle}"), is("shows", "above-window"))
[when]the {axle:front|rear} tyres are hotter than those of the other axle=Reading(is("place", "{axle}"), is("shows", "hotter-axle"))
[when]the {axle:front|rear} tread is hotter at the inner edge=Reading(is("place", "{axle}"), is("shows", "inner-edge-hot"))
[when]the {axle:front|rear} tread is hotter at the outer edge=Reading(is("place", "{axle}"), is("shows", "outer-edge-hot"))
[when]the {axle:front|rear} tread is hotter in the middle=Reading(is("place", "{axle}"), is("shows", "middle-hot"))
[when]the {axle:front|rear} tread is cooler in the middle=Reading(is("place", "{axle}"), is("shows", "middle-cold"))
[when]the {axle:front|rear} tread is even across its width=Reading(is("place", "{axle}"), is("shows", "even-tread"))
[when]the {axle:front|rear} tyres are above their target pressure=Reading(is("place", "{axle}"), is("shows", "above-target"))
[when]the {axle:front|rear} tyres are at their target pressure=Reading(is("place", "{axle}"), is("shows", "at-target"))
[when]the {axle:front|rear} tyres are below their target pressure=Reading(is("place", "{axle}"), is("shows", "below-target"))
[when]the {axle:front|rear} tyres are set below their cold minimum=Reading(is("place", "{axle}"), is("shows", "below-minimum"))
[when]the {axle:front|rear} pressures read no higher hot than cold=Reading(is("place", "{axle}"), is("shows", "no-growth"))
[when]the {wheel:front-left|front-right|rear-left|rear-right} tyre alone is above its target pressure=Reading(is("place", "{wheel}"), is("shows", "above-target-alone"))
[when]the {wheel:front-left|front-right|rear-left|rear-right} tyre alone is below its target pressure=Reading(is("place", "{wheel}"), is("shows", "below-target-alone"))
[when]the {axle:front|rear} tyres differ from side to side by more than the circuit explains=Reading(is("place", "{axle}"), is("shows", "sides-differ"))
[when]the {axle:front|rear} tread temperatures were not read=not Reading(is("place", "{axle}"), is("instrument", "pyrometer"))
[when]the {axle:front|rear} pressures were not read=not Reading(is("place", "{axle}"), is("instrument", "gauge"))

# The car and the day
[when]the car is {drive:front|rear|all}-wheel drive=Setup(is("drive", "{drive}"))
[when]the car is not {drive:front|rear|all}-wheel drive=Setup(isNot("drive", "{drive}"))
[when]the {axle:front|rear} wheels are driven=Setup(is("drive", "{axle}", "all"))
[when]the {axle:front|rear} wheels are not driven=Setup(isNot("drive", "{axle}", "all"))
[when]the car has an adjustable {adjuster:front-toe|rear-toe|front-camber|rear-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast}=Setup(is("adjustable {adjuster}", "yes"))
[when]the car has no adjustable {adjuster:front-toe|rear-toe|front-camber|rear-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast}=Setup(is("adjustable {adjuster}", "no"))
[when]the {axle:front|rear} wheels are toed in by more than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(above("{axle}-toe", {number}))
[when]the {axle:front|rear} wheels are toed out by more than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(below("{axle}-toe", -{number}))
[when]the {axle:front|rear} wheels are toed in=Setup(above("{axle}-toe", 0))
[when]the {axle:front|rear} wheels are toed out=Setup(below("{axle}-toe", 0))
[when]the {axle:front|rear} camber is more negative than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(below("{axle}-camber", -{number}))
[when]the {axle:front|rear} camber is less negative than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(above("{axle}-camber", -{number}))
[when]the caster is more than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(above("caster", {number}))
[when]the caster is less than {number:[0-9]+\.[0-9]+|[0-9]+} degrees=Setup(below("caster", {number}))
[when]the surface is {surface:dry|damp|wet}=Day(is("surface", "{surface}"))
[when]the surface is not {surface:dry|damp|wet}=Day(isNot("surface", "{surface}"))
[when]the circuit turns both ways=Day(is("circuit", "both-ways"))
[when]the track is cold=Day(is("track", "cold"))
[when]the track is hot=Day(is("track", "hot"))

# What other rules have found: likely from a certainty of 0.2, nearly certain from 0.6
[when]{finding:[a-z][a-z0-9-]*} is likely=Finding(is("finding", "{finding}"), atLeast("certainty", 0.2))
[when]{finding:[a-z][a-z0-9-]*} is nearly certain=Finding(is("finding", "{finding}"), atLeast("certainty", 0.6))
[when]{finding:[a-z][a-z0-9-]*} is not likely=not Finding(is("finding", "{finding}"), atLeast("certainty", 0.2))

# What follows
[then]find {finding:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.find(drools, "{finding}", {certainty});
[then]speak against {finding:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.speakAgainst(drools, "{finding}", {certainty});
[then]propose {adjuster:front-toe|rear-toe|front-camber|rear-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.propose(drools, "{adjuster}", "{direction}", {certainty});
[then]oppose {adjuster:front-toe|rear-toe|front-camber|rear-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.oppose(drools, "{adjuster}", "{direction}", {certainty});
[then]withhold {adjuster:front-toe|rear-toe|front-camber|rear-camber|caster|front-pressure|rear-pressure|front-left-pressure|front-right-pressure|rear-left-pressure|rear-right-pressure|front-anti-roll-bar|rear-anti-roll-bar|front-springs|rear-springs|front-bump|front-rebound|rear-bump|rear-rebound|front-ride-height|rear-ride-height|front-wing|rear-wing|brake-bias|differential-preload|differential-power|differential-coast} {direction:toe-out|toe-in|more-negative|less-negative|more|less|higher|lower|softer|stiffer|forward|rearward}=Conclude.withhold(drools, "{adjuster}", "{direction}");
[then]withhold every balance change=Conclude.withholdBalance(drools);
[then]withhold what loads the {axle:front|rear} tyres more=Conclude.withholdLoading(drools, "{axle}");
[then]advise the driver {driving:[a-z][a-z0-9-]*} with certainty {certainty:0\.[0-9]+|1\.0}=Conclude.advise(drools, "{driving}", {certainty});
[then]caution {caution:[a-z][a-z0-9-]*}=Conclude.caution(drools, "{caution}");
