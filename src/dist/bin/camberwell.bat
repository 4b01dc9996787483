@echo off
rem Starts camberwell. JAVA_HOME chooses the Java to run on; CAMBERWELL_JAVA_OPTIONS are handed to it.
setlocal
rem A drive's root ends in a backslash, which would take the closing quote with it; hence the dot.
set "CAMBERWELL_STARTED=%CD%\."
set "CAMBERWELL_JAVA=java"
if defined JAVA_HOME set "CAMBERWELL_JAVA=%JAVA_HOME%\bin\java"
rem A page is soonest there with the quick compiler alone; a log of millions of rows wants both, and little room.
set "CAMBERWELL_TUNED=-XX:TieredStopAtLevel=1"
if "%~1"=="observe" set "CAMBERWELL_TUNED=-XX:TieredStopAtLevel=4 -Xms96m -Xmn24m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=20"
rem The class-data archive fits only the class path that it was made with, hence the change of folder. A Java that it
rem does not fit ignores it.
pushd "%~dp0.." || exit /b 2
"%CAMBERWELL_JAVA%" -Xlog:disable -Xshare:auto -XX:SharedArchiveFile=lib/camberwell.jsa %CAMBERWELL_TUNED% ^
  -XX:+UseSerialGC -XX:-UsePerfData -Ddrools.externaliseCanonicalModelLambda=false ^
  -Dcamberwell.home=. "-Dcamberwell.directory=%CAMBERWELL_STARTED%" ^
  -Dcamberwell.terminal=true -Djdk.console=java.base %CAMBERWELL_JAVA_OPTIONS% -cp lib/camberwell-${project.version}.jar camberwell.cli.Main %*
set "CAMBERWELL_CODE=%ERRORLEVEL%"
popd
exit /b %CAMBERWELL_CODE%
