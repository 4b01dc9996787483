@echo off
rem Starts camberwell. JAVA_HOME chooses the Java to run on; CAMBERWELL_JAVA_OPTIONS are handed to it.
setlocal
set "CAMBERWELL_HOME_DIR=%~dp0.."
set "CAMBERWELL_JAVA=java"
if defined JAVA_HOME set "CAMBERWELL_JAVA=%JAVA_HOME%\bin\java"
"%CAMBERWELL_JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto ^
  "-Dcamberwell.home=%CAMBERWELL_HOME_DIR%" -Dcamberwell.terminal=true %CAMBERWELL_JAVA_OPTIONS% ^
  -cp "%CAMBERWELL_HOME_DIR%\lib\*" camberwell.cli.Main %*
exit /b %ERRORLEVEL%
