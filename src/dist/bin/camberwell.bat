@echo off
rem Starts camberwell. JAVA_HOME chooses the Java to run on; CAMBERWELL_JAVA_OPTIONS are handed to it.
setlocal
rem A drive's root ends in a backslash, which would take the closing quote with it; hence the dot.
set "CAMBERWELL_STARTED=%CD%\."
set "CAMBERWELL_JAVA="
for %%j in (java.exe) do set "CAMBERWELL_JAVA=%%~$PATH:j"
if defined JAVA_HOME set "CAMBERWELL_JAVA=%JAVA_HOME%\bin\java.exe"
set "CAMBERWELL_WRONG=there is no Java on the path or in JAVA_HOME"
if not exist "%CAMBERWELL_JAVA%" goto wrong
rem A Java says its version in a file beside it; asking the Java itself would take as long as most answers do.
set "CAMBERWELL_VERSION=17"
for %%j in ("%CAMBERWELL_JAVA%") do set "CAMBERWELL_RELEASE=%%~dpj..\release"
if exist "%CAMBERWELL_RELEASE%" for /f "usebackq tokens=1,2 delims==" %%k in ("%CAMBERWELL_RELEASE%") do if "%%k"=="JAVA_VERSION" set "CAMBERWELL_VERSION=%%~l"
set "CAMBERWELL_WRONG=the Java in use is version %CAMBERWELL_VERSION%"
for /f "delims=.+-_" %%m in ("%CAMBERWELL_VERSION%") do if %%m LSS 17 goto wrong
rem A page is soonest there with the quick compiler alone; a log of millions of rows wants both, and little room.
set "CAMBERWELL_TUNED=-XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -XX:-UseDynamicNumberOfCompilerThreads"
if "%~1"=="observe" set "CAMBERWELL_TUNED=-XX:TieredStopAtLevel=4 -Xms96m -Xmn24m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=20"
rem The class-data archive fits only the class path that it was made with, hence the change of folder, and only the Java
rem and the very files. Where the one of the distribution does not fit, one of the user's own is made and kept.
pushd "%~dp0.." || exit /b 2
set "CAMBERWELL_OWN="
if defined LOCALAPPDATA set "CAMBERWELL_OWN=%LOCALAPPDATA%\camberwell\classes\camberwell-${project.version}.jsa"
set "CAMBERWELL_ARCHIVE=lib\camberwell.jsa"
if exist "%CAMBERWELL_OWN%" set "CAMBERWELL_ARCHIVE=%CAMBERWELL_OWN%"
"%CAMBERWELL_JAVA%" -Xlog:disable -Xshare:auto "-XX:SharedArchiveFile=%CAMBERWELL_ARCHIVE%" %CAMBERWELL_TUNED% ^
  -XX:+UseSerialGC -XX:-UsePerfData --enable-native-access=ALL-UNNAMED ^
  -Ddrools.externaliseCanonicalModelLambda=false ^
  -Dcamberwell.home=. "-Dcamberwell.directory=%CAMBERWELL_STARTED%" "-Dcamberwell.archive=%CAMBERWELL_OWN%" ^
  -Dcamberwell.terminal=true -Djdk.console=java.base %CAMBERWELL_JAVA_OPTIONS% -cp lib/camberwell-${project.version}.jar camberwell.cli.Main %*
set "CAMBERWELL_CODE=%ERRORLEVEL%"
popd
exit /b %CAMBERWELL_CODE%

:wrong
echo camberwell: %CAMBERWELL_WRONG%; install Java 17 or later, or let JAVA_HOME name the folder of one>&2
exit /b 2
